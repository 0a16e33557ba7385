using System.Collections.Immutable;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;

namespace Kitwright.Print.Pages;

/// <summary>
/// What the quilt takes, by letter. The same table is the key that says which fabric is which: the fabric as drawn, and
/// an empty square for a snip of the real one.
/// </summary>
internal static class NeedsPage
{
    private const double SwatchWidth = 40;
    private const double SwatchHeight = 30;
    private const int MostTogether = 8;

    public static Section Of(BookletSource source)
    {
        var which = Stack.Of(3, [.. WhichFabric.Of(source.Plan.Needs).Say().Select(line => Texts.Body(source.Say(line)))]);
        var terms = source.Plan.Cloths.Select(cloth => cloth.Terms).FirstOrDefault() ?? ClothTerms.Usual;
        ImmutableArray<Element> last =
        [
            Texts.Heading(source.Say("which.title")),
            which,
            Texts.Small(source.Say("print.needs.width", ("width", terms.UsableWidth), ("straightening", terms.Straightening))),
        ];
        return Section.Titled(
            source.Say("print.needs"),
            [
                Texts.Body(source.Say("print.needs.key")),
                Table(source),
                // A line alone on a page of its own is not read.
                .. which.Items.Length <= MostTogether ? ImmutableArray.Create<Element>(new Together(Stack.Of(6, last))) : last,
            ]
        );
    }

    private static Grid Table(BookletSource source)
    {
        var rows = source.Plan.Needs.Lengths.Select(need => Row(source, need)).ToImmutableArray();
        if (source.Plan.Needs.Batting is { } batting)
        {
            rows = rows.Add(
                [
                    Cell(""),
                    Cell(""),
                    Cell(source.Say("print.batting")),
                    Cell(source.Say("print.batting.of", ("overhang", source.Plan.Backing.Overhang))),
                    Right(source.Say("print.size", ("width", batting.Width), ("height", batting.Height))),
                ]
            );
        }

        return new(
            [SwatchWidth, SwatchWidth, null, null, 104],
            [
                Head(source, "print.column.letter"),
                Head(source, "print.column.snip"),
                Head(source, "print.column.fabric"),
                Head(source, "print.column.roles"),
                Head(source, "print.column.length") with { Horizontal = HorizontalPlace.Right },
            ],
            rows,
            Look.Rule
        );
    }

    private static ImmutableArray<Element> Row(BookletSource source, Need need)
    {
        var fabric = source.Plan.Fabrics.First(f => f.Letter == need.Letter);
        var snip = new Shape(Outline.Rectangle(new(0.5, 0.5, SwatchWidth - 1, SwatchHeight - 1)), null, Look.Dashes);
        return
        [
            new Picture(Swatch.Of(need.Letter, source.Fills.Of(fabric), SwatchWidth, SwatchHeight), SwatchWidth, SwatchHeight),
            new Picture(snip, SwatchWidth, SwatchHeight),
            Stack.Of(0, [Cell(Name(source, fabric)), .. Same(source, fabric)]),
            Cell(source.RoleNames(need.Roles)),
            Right(source.Say("print.yards", ("length", need.Length))),
        ];
    }

    private static string Name(BookletSource source, PlanFabric fabric) =>
        source.Say("print.fabric", ("name", fabric.Name), ("number", fabric.Number ?? "none"));

    // Two letters may be one fabric, each with a length of its own.
    private static IEnumerable<Element> Same(BookletSource source, PlanFabric fabric)
    {
        var others = source
            .Plan.Fabrics.Where(other => other.Letter != fabric.Letter && other.Number is not null && other.Number == fabric.Number)
            .Select(other => Words.Message.Plain(other.Letter))
            .ToImmutableArray();
        return others.IsEmpty ? [] : [Texts.Plain(source.Say("print.same", ("letters", others)), Look.Small)];
    }

    private static Paragraph Cell(string text) => Texts.Plain(text, Look.Body);

    private static Paragraph Head(BookletSource source, string key) => Texts.Plain(source.Say(key), Look.Small);

    private static Paragraph Right(string text) =>
        Texts.Plain(text, Look.Figures.Bold) with { Horizontal = HorizontalPlace.Right };
}
