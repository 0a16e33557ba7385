using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Quilts.Sentences;

/// <summary>
/// The decisions of a quilt as a pattern states them. Each value is a slot of its message, under the name of the
/// decision, so that a screen can put a control in its place.
/// </summary>
public static class QuiltSentences
{
    /// <summary>More kinds of blocks than this are counted, not named: a scrap quilt may have dozens.</summary>
    private const int MostKindsNamed = 4;

    /// <summary>Blocks and setting, borders, finished size, binding, backing, seam: one message each.</summary>
    /// <param name="design">Gives the finished size and the number of blocks of each kind.</param>
    public static ImmutableArray<Message> Of(Quilt quilt, Design design)
    {
        var sentences = ImmutableArray.CreateBuilder<Message>();
        sentences.Add(Top(quilt, design));
        sentences.Add(BindingSentence(quilt.Binding));
        sentences.Add(
            Message.Of("sentence.backing", ("overhang", quilt.Backing.Overhang), ("seam", quilt.Backing.Seam))
        );
        sentences.Add(Message.Of("sentence.seam", ("seam", quilt.Seam), ("step", quilt.RulerStep)));
        return sentences.ToImmutable();
    }

    /// <summary>The first of the sentences: what the top is, from the blocks out to the finished size.</summary>
    public static Message Top(Quilt quilt, Design design) =>
        Message.Of(
            "sentence.top",
            ("blocks", Blocks(quilt, design)),
            ("setting", Set(quilt.Setting)),
            ("sashing", SashingPhrase(quilt.Setting.Sashing)),
            ("borders", BorderPhrase(quilt, design)),
            ("size", Message.Of("sentence.size", ("width", design.Width), ("height", design.Height)))
        );

    private static ImmutableArray<Message> Blocks(Quilt quilt, Design design)
    {
        var laid = design.Placements.Where(placement => !IsInBorder(placement)).ToArray();
        var counts = laid.CountBy(placement => placement.Block).ToDictionary();
        if (counts.Count > MostKindsNamed)
        {
            return [Message.Of("sentence.many-blocks", ("count", laid.Length), ("kinds", counts.Count))];
        }

        return
        [
            .. quilt
                .Blocks.Where(block => counts.ContainsKey(block.Id))
                .Select(block =>
                    Message.Of(
                        block.Width == block.Height ? "sentence.blocks" : "sentence.oblong-blocks",
                        ("count", counts[block.Id]),
                        ("name", BlockName.BeforeBlock(block.Name)),
                        ("width", block.Width),
                        ("height", block.Height)
                    )
                ),
        ];
    }

    private static Message Set(Setting setting) =>
        Message.Of(
            setting.HalfDrop is not null ? "sentence.set-dropped" : setting.Kind == SettingKind.OnPoint ? "sentence.set-on-point" : "sentence.set-straight",
            ("columns", setting.Columns),
            ("rows", setting.Rows)
        );

    private static Message SashingPhrase(Sashing? sashing) =>
        sashing is null
            ? Message.Of("sentence.edge-to-edge")
            : Message.Of(
                "sentence.sashed",
                ("width", sashing.Width),
                ("where", sashing.Lines switch { SashLines.Columns => "columns", SashLines.Rows => "rows", _ => sashing.Outer ? "round" : "between" }),
                ("cornerstones", sashing.Cornerstone is null ? "without" : "with")
            );

    private static bool IsInBorder(Placement placement) => placement.Id.Value.StartsWith("border/", StringComparison.Ordinal);

    private static Message BorderPhrase(Quilt quilt, Design design) =>
        quilt.Borders.IsEmpty
            ? Message.Of("sentence.no-border")
            : Message.Of(
                "sentence.borders",
                ("count", quilt.Borders.Length),
                ("widths", quilt.Borders.Select((border, i) => BorderPhrase(quilt, design, border, i + 1)).ToImmutableArray())
            );

    private static Message BorderPhrase(Quilt quilt, Design design, Border border, int number)
    {
        if (border.Units is not { } units)
        {
            return Message.Of("sentence.border-width", ("width", border.Width));
        }

        int Units(string side) => design.Placements.Count(p => p.Id.Value.StartsWith($"border/{number}/{side}/", StringComparison.Ordinal));
        Surd Coping(string side, Func<Point, Surd> way) =>
            design.Patches.FirstOrDefault(p => p.Id.Value == $"frame/border/{number}/coping/{side}")?.Shape.Bounds() is var (low, high) ? way(high - low) : Surd.Zero;
        Length left = Length.Inches(Coping("left", step => step.X).One),
            above = Length.Inches(Coping("top", step => step.Y).One);
        return Message.Of(
            "sentence.border-units",
            ("width", border.Width),
            ("name", units.Alternate is { } other ? Message.Of("sentence.border-turns", ("one", quilt.Block(units.Block).Name), ("other", quilt.Block(other).Name)) : Message.Plain(quilt.Block(units.Block).Name)),
            ("across", Units("top")),
            ("down", Units("left")),
            ("coping", new UnitFit(border.Width, 0, 0, left, above).Copes),
            ("left", left),
            ("above", above)
        );
    }

    private static Message BindingSentence(Binding binding) =>
        Message.Of(
            "sentence.binding",
            ("strip", binding.StripWidth),
            ("allowance", binding.Allowance),
            ("grain", binding.Grain == StripGrain.Bias ? "bias" : "straight")
        );
}
