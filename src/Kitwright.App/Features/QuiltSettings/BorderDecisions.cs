using System.Collections.Immutable;
using System.Globalization;
using Kitwright.App.Features.Deciding;
using Kitwright.App.Web;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;

namespace Kitwright.App.Features.QuiltSettings;

/// <summary>Each border of a quilt as decisions: its corners, what it is pieced from, and how its units come out.</summary>
public static class BorderDecisions
{
    public static IEnumerable<Decision> Of(Quilt quilt) => Enumerable.Range(0, quilt.Borders.Length).SelectMany(border => Of(quilt, border));

    private static IEnumerable<Decision> Of(Quilt quilt, int border)
    {
        yield return Question("border-corners", border, Corners(quilt, border), Said("border-corners", border, "butted", "mitered", "corners", "unit", "out"));
        yield return Question("border-pieced", border, block => block == "plain" ? Plain(quilt, border) : BorderChanges.Pieced(quilt, border, block), Blocks(quilt, border));
        if (quilt.Borders[border].Units is null)
        {
            yield break;
        }

        yield return Question("border-units", border, Units(quilt, border), [.. Turns(quilt, border), .. Said("border-units", border, "round", "middle", "coping", "exact")]);
        yield return Question(
            "border-alternate",
            border,
            block => BorderChanges.Alternating(quilt, border, block == "none" ? null : block),
            [.. Said("border-alternate", border, "none").Where(_ => quilt.Borders[border].Units!.Alternate is not null), .. Names(quilt).Where(block => block.Id != quilt.Borders[border].Units!.Block).Select(block => new Choice(block.Id, Saying.Say("web.settings.border-alternate.unit", ("name", block.Name))))]
        );
        yield return Question("border-fit", border, way => Fitted(quilt, border, way), Ways(quilt, border));
    }

    private static Decision Question(string kind, int border, Func<string, Quilt?> change, ImmutableArray<Choice> answers) =>
        new($"{kind}.{Text(border + 1)}", kind, border + 1, "", answers, change);

    private static ImmutableArray<Choice> Said(string kind, int border, params ReadOnlySpan<string> answers)
    {
        var said = ImmutableArray.CreateBuilder<Choice>();
        foreach (var answer in answers)
        {
            said.Add(new(answer, Saying.Say($"web.settings.{kind}.{answer}", ("index", border + 1))));
        }

        return said.ToImmutable();
    }

    private static Func<string, Quilt?> Corners(Quilt quilt, int border) =>
        answer =>
            answer switch
            {
                "butted" => BorderChanges.Cornered(quilt, border, BorderStyle.Butted),
                "mitered" => BorderChanges.Cornered(quilt, border, BorderStyle.Mitered),
                "corners" => BorderChanges.Cornered(quilt, border, BorderStyle.CornerSquares),
                "unit" => BorderChanges.UnitCorners(quilt, border),
                "out" => BorderChanges.Dropped(quilt, border),
                _ => null,
            };

    private static Quilt? Plain(Quilt quilt, int border) => quilt.Borders[border].Units is null ? null : BorderChanges.Plain(quilt, border);

    private static ImmutableArray<Choice> Blocks(Quilt quilt, int border) =>
        [
            .. Said("border-pieced", border, "plain"),
            .. Names(quilt).Select(block => new Choice(block.Id, Saying.Say("web.settings.border-pieced.unit", ("name", block.Name)))),
        ];

    /// <summary>The usual units of the book, and the quilt's own blocks.</summary>
    private static IEnumerable<(string Id, string Name)> Names(Quilt quilt) =>
        BookUnits
            .Usual.Where(id => quilt.Blocks.All(b => b.Id != id))
            .Select(id => (Id: id, BlockBook.Find(id)!.Name))
            .Concat(quilt.Blocks.Select(block => (block.Id, block.Name)));

    private static Func<string, Quilt?> Units(Quilt quilt, int border) =>
        answer =>
            answer switch
            {
                [var turns and >= '0' and <= '3'] => BorderChanges.Changed(quilt, border, units => units with { Turns = turns - '0' }),
                "round" => BorderChanges.Changed(quilt, border, units => units with { FromMiddle = false }),
                "middle" => BorderChanges.Changed(quilt, border, units => units with { FromMiddle = true }),
                "coping" => BorderChanges.Changed(quilt, border, units => units with { Coping = true }),
                "exact" => BorderChanges.Changed(quilt, border, units => units with { Coping = false }),
                _ => null,
            };

    private static IEnumerable<Choice> Turns(Quilt quilt, int border) =>
        Enumerable
            .Range(0, 4)
            .Where(turns => turns != quilt.Borders[border].Units!.Turns)
            .Select(turns => new Choice(Text(turns), Saying.Say("web.settings.border-units.turned", ("turns", turns))));

    private static ImmutableArray<Choice> Ways(Quilt quilt, int border)
    {
        var ruler = new Ruler(quilt.Units);
        return
        [
            .. BorderProposals
                .In(quilt, border)
                .Select(way => new Choice(
                    $"{ruler.Value(way.Width)};{Text(way.Fit.Across)};{Text(way.Fit.Down)}",
                    Saying.Say(
                        "web.settings.border-fit.way",
                        ("width", way.Width),
                        ("across", way.Fit.Across),
                        ("down", way.Fit.Down),
                        ("coping", way.Fit.Copes),
                        ("left", way.Fit.CopingAcross),
                        ("above", way.Fit.CopingDown)
                    )
                )),
        ];
    }

    private static Quilt? Fitted(Quilt quilt, int border, string way) =>
        way.Split(';') is [var width, var across, var down]
        && LengthText.TryParse(width, out var wide)
        && int.TryParse(across, NumberStyles.None, CultureInfo.InvariantCulture, out var a)
        && int.TryParse(down, NumberStyles.None, CultureInfo.InvariantCulture, out var d)
            ? BorderChanges.Fitted(quilt, border, wide, a, d)
            : null;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
