using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>A cut list's plan as a sheet of instructions for the table.</summary>
internal static class CutText
{
    public static void Write(TextWriter output, CutOutcome cut, Catalog words)
    {
        foreach (var cloth in cut.Cloths)
        {
            Write(output, cloth, words);
            Left(output, cloth, words);
        }

        Figures(output, cut, words);
        output.WriteLine(words.Say("print.caution.cutter.1"));
        output.WriteLine(words.Say("print.caution.cutter.2"));
    }

    private static void Write(TextWriter output, ClothCut cloth, Catalog words)
    {
        var used = Length.Zero;
        string InUnits(Length length) => (cloth.Width with { Length = length }).ToString();
        if (cloth.Cloth is { } label)
        {
            output.WriteLine(
                words.Say(
                    "cut.instructions.cloth",
                    ("count", cloth.Times),
                    ("label", label),
                    ("width", cloth.Width.ToString()),
                    ("length", cloth.Length.ToString()),
                    ("along", cloth.FirstCut == "along" ? "yes" : "no")
                )
            );
        }
        else
        {
            used = cloth.Strips.Aggregate(cloth.Length.Length, (left, strip) => left - (strip.Height.Length * strip.Times));
            if (!used.IsZero)
            {
                output.WriteLine(words.Say("cut.instructions.square", ("length", InUnits(used))));
            }
        }

        foreach (var strip in cloth.Strips)
        {
            used += strip.Height.Length * strip.Times;
            output.WriteLine(
                strip.Layers == 1
                    ? words.Say("cut.instructions.strips", ("count", strip.Times), ("height", strip.Height.ToString()))
                    : words.Say("cut.instructions.folded", ("count", strip.Times), ("height", strip.Height.ToString()), ("layers", strip.Layers))
            );
            foreach (var cut in strip.SubCuts)
            {
                output.WriteLine("    " + words.Say(SubCut(cut)));
            }

            output.WriteLine("    " + words.Say("cut.instructions.used", ("length", InUnits(used))));
        }
    }

    private static void Left(TextWriter output, ClothCut cloth, Catalog words)
    {
        if (!cloth.Leftovers.IsEmpty)
        {
            var each = cloth.Leftovers.Select(left => Message.Of(
                "cut.instructions.leftover",
                ("count", left.Count),
                ("height", left.Length.ToString()),
                ("width", left.Width.ToString())
            ));
            output.WriteLine(words.Say("cut.instructions.left", ("leftovers", each.ToImmutableArray())));
        }
    }

    private static Message SubCut(SubCutOutcome cut)
    {
        var plain = cut is { Stacked: 1, Above.IsEmpty: true };
        if (plain && cut.CutWidth == cut.Width)
        {
            return Message.Of(
                "cut.instructions.piece",
                ("count", cut.Times),
                ("width", cut.Width.ToString()),
                ("height", cut.Height.ToString()),
                ("label", cut.Label),
                ("trims", cut.Trims * cut.Times)
            );
        }

        ImmutableArray<StackedOutcome> stack = [new(cut.Label, cut.Width, cut.Height, cut.Stacked, cut.Turned), .. cut.Above];
        return Message.Of(
            "cut.instructions.stack",
            ("count", cut.Times),
            ("width", cut.CutWidth.ToString()),
            (
                "pieces",
                stack
                    .Select(piece => Message.Of(
                        "cut.instructions.stacked",
                        ("count", cut.Times * piece.Stacked),
                        ("width", piece.Width.ToString()),
                        ("height", piece.Height.ToString()),
                        ("label", piece.Label)
                    ))
                    .ToImmutableArray()
            )
        );
    }

    private static void Figures(TextWriter output, CutOutcome cut, Catalog words)
    {
        if (!cut.Short.IsEmpty)
        {
            output.WriteLine(words.Say("cut.instructions.short"));
        }

        if (cut.Length is { } length)
        {
            var unit = length.Unit is null ? "in" : "none";
            if (cut.Bound is { } bound)
            {
                output.WriteLine(words.Say("cut.instructions.length", ("length", length.ToString()), ("bound", bound.ToString()), ("unit", unit)));
                output.WriteLine(words.Say(Proof(cut, length, bound)));
            }

            if (cut.Purchase is { } purchase)
            {
                output.WriteLine(words.Say("cut.instructions.purchase", ("purchase", purchase.ToString()), ("unit", unit)));
            }

            return;
        }

        output.WriteLine(words.Say("cut.instructions.touched", ("sheets", cut.Sheets)));
        if (cut is { Cost: { } cost, CostBound: { } least })
        {
            output.WriteLine(words.Say("cut.instructions.cost", ("cost", cost), ("bound", least)));
        }

        if (cut.SheetsBound is { } fewest and > 0)
        {
            output.WriteLine(words.Say("cut.instructions.fewest", ("bound", fewest)));
        }
    }

    private static Message Proof(CutOutcome cut, Measured length, Measured bound) =>
        cut.Status switch
        {
            "proved" => Message.Of("cut.instructions.proved"),
            "provedBySearch" => Message.Of("cut.instructions.searched"),
            _ => Message.Of("cut.instructions.within", ("percent", Percent(length.Length, bound.Length))),
        };

    /// <summary>The gap in hundredths of a percent, rounded up.</summary>
    private static string Percent(Length length, Length bound) =>
        LengthText.Mixed(new Rational(((length - bound) / bound * 10_000).Ceiling(), 100));
}
