using System.Collections.Immutable;
using Kitwright.Cutting.Instructions;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Words;

namespace Kitwright.Print.Pages;

/// <summary>The cutting chart: per fabric its lines, and beside each the strips that it cuts, to scale.</summary>
internal static class CuttingPages
{
    private const double TextColumn = 196;
    private const double ColumnGap = 16;
    private const double SwatchWidth = 40;
    private const double HighestStrip = 400;

    public static Section Of(BookletSource source) =>
        Section.Titled(
            source.Say("print.cutting"),
            [Texts.Body(source.Say("print.cutting.how")), .. source.Plan.Cloths.SelectMany(cloth => Cloth(source, cloth))]
        );

    private static IEnumerable<Element> Cloth(BookletSource source, ClothPlan cloth)
    {
        var fabric = source.Plan.Fabrics.First(f => f.Letter == cloth.Letter);
        yield return new Blank(8);
        yield return Head(source, cloth, fabric);
        var drawn = source.Width - TextColumn - ColumnGap;
        var picture = new StripPicture(cloth, Paint.Of(source.Fills.ColorOf(fabric)), drawn / cloth.Terms.UsableWidth.InInches.ToDouble()) { Direction = fabric.Direction };
        foreach (var line in CutInstructions.Lines(cloth))
        {
            yield return line.Strip is { } strip
                ? new Row([Chart(source, cloth, line), new(drawn, Strips(source.Say(line.Say), strip, Fitted(picture, strip)))], ColumnGap)
                : Words(source, line) with { KeepWithNext = true };
        }
    }

    private static IEnumerable<Element> Print(BookletSource source, PlanFabric fabric) =>
        PrintWords.Of(fabric) is { } print ? [Texts.Small(source.Say(print))] : [];

    // Said with the fabric and not after its last strip, so that it never stands alone on a page.
    private static IEnumerable<Element> Left(BookletSource source, ClothPlan cloth)
    {
        var leftovers = Leftovers.Of(cloth, Leftovers.UsualLeast);
        return leftovers.IsEmpty
            ? []
            :
            [
                Texts.Small(
                    source.Say(
                        "print.leftovers",
                        ("parts", leftovers.Select(left => Message.Of("print.leftover", ("count", left.Count), ("height", left.Height), ("width", left.Width))).ToImmutableArray())
                    )
                ),
            ];
    }

    /// <summary>A length cut along the selvage may be longer than the page: it is drawn smaller.</summary>
    private static StripPicture Fitted(StripPicture picture, StripCut strip) =>
        picture.HeightOf(strip) <= HighestStrip
            ? picture
            : picture with { Scale = picture.Scale * HighestStrip / picture.HeightOf(strip) };

    private static Row Head(BookletSource source, ClothPlan cloth, PlanFabric fabric)
    {
        var swatch = Swatch.Of(cloth.Letter, source.Fills.Of(fabric), SwatchWidth, 32) with { Role = Role.Decoration };
        var title = source.Say("print.cloth", ("letter", cloth.Letter), ("roles", source.RoleNames(cloth.Roles)));
        var length = source.Say("print.cloth.length", ("name", fabric.Name), ("purchase", cloth.Purchase), ("cut", cloth.Cut));
        return new([new(SwatchWidth, new Picture(swatch, SwatchWidth, 32)), new(null, Stack.Of(1, [Texts.Heading(title), Texts.Small(length), .. Print(source, fabric), .. Left(source, cloth)]))], 10)
        {
            KeepWithNext = true,
        };
    }

    private static RowCell Chart(BookletSource source, ClothPlan cloth, CutLine line) =>
        new(TextColumn, Words(source, line))
        {
            Continued = Texts.Small(source.Say("print.cloth.continued", ("letter", cloth.Letter), ("height", line.Strip!.Height))),
        };

    private static Together Words(BookletSource source, CutLine line) =>
        new(
            new Row(
                [
                    new(10, TickBox()),
                    new(null, Stack.Of(1, [Texts.Body(source.Say(line.Say)), .. Used(source, line)])),
                ],
                6
            )
        );

    // Squaring the end uses what its own line says.
    private static IEnumerable<Element> Used(BookletSource source, CutLine line) =>
        line is { Strip: not null, UsesCloth: true } ? [Texts.Small(source.Say("print.used", ("length", line.Used)))] : [];

    /// <summary>To be ticked off by hand.</summary>
    internal static Picture TickBox()
    {
        var top = Look.Body.Baseline - 7.5;
        var box = new Shape(Outline.Rectangle(new(0.5, top, 8, 8)), null, Look.Edge) { Role = Role.Decoration };
        return new(box, 10, Look.Body.Leading);
    }

    // The first of equal strips speaks for all of them; a reader need not hear the others.
    private static Stack Strips(string words, StripCut strip, StripPicture picture) =>
        new(
            [
                .. Enumerable
                    .Range(0, strip.Times)
                    .Select(i => new Picture(
                        picture.One(strip, labelAll: i == 0) with { Role = i == 0 ? Role.Figure(words) : Role.Decoration },
                        picture.Width,
                        picture.HeightOf(strip)
                    )),
            ],
            1.5
        );
}
