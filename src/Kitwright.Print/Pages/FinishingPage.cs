using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Words;

namespace Kitwright.Print.Pages;

/// <summary>Backing, batting and binding, with their sizes.</summary>
internal static class FinishingPage
{
    private const double DrawingWidth = 170;

    public static Section Of(BookletSource source)
    {
        var plan = source.Plan;
        var picture = BackingPicture.Of(plan, DrawingWidth);
        var alternative = source.Say("print.alt.backing", ("panels", plan.Backing.Panels));
        return Section.Titled(
            source.Say("print.finishing"),
            Texts.Heading(source.Say("print.backing")),
            new Row(
                [
                    new(null, Stack.Of(6, [.. BackingLines(source).Select(Texts.Body)])),
                    new(
                        DrawingWidth,
                        Stack.Of(
                            4,
                            picture with
                            {
                                Drawing = new Group([picture.Drawing]) { Role = Role.Figure(alternative) },
                            },
                            Texts.Small(source.Say("print.backing.drawing"))
                        )
                    ),
                ],
                24
            ),
            new Blank(4),
            Texts.Heading(source.Say("print.batting")),
            Stack.Of(4, [.. BattingLines(source).Select(Texts.Body)]),
            new Blank(4),
            Texts.Heading(source.Say("print.binding")),
            Binding(source)
        );
    }

    private static Row Binding(BookletSource source)
    {
        var role = source.Plan.Pieces.First(piece => piece.Id == source.Plan.Binding.Piece).Role;
        var picture = BindingPicture.Of(source.Fills.OfRole(role));
        return new(
            [
                new(null, Stack.Of(6, [.. BindingLines(source).Select(Texts.Body), Texts.Body(source.Say("print.binding.sew"))])),
                new(
                    DrawingWidth,
                    Stack.Of(
                        4,
                        picture with
                        {
                            Drawing = new Group([picture.Drawing]) { Role = Role.Figure(source.Say("print.alt.binding")) },
                        },
                        Texts.Small(source.Say("print.binding.drawing"))
                    )
                ),
            ],
            24
        );
    }

    private static IEnumerable<string> BackingLines(BookletSource source)
    {
        var backing = source.Plan.Backing;
        yield return source.Say(
            backing.Panels == 1 ? "print.backing.one"
                : backing.HalvesOutside ? "print.backing.halves"
                : "print.backing.panels",
            ("panels", backing.Panels),
            ("length", backing.PanelLength),
            ("seam", backing.Seam),
            ("direction", backing.Across ? "across" : "down")
        );
        yield return source.Say("print.backing.size", ("width", backing.Width), ("height", backing.Height), ("overhang", backing.Overhang));
        yield return source.Say("print.backing.buy", ("length", backing.Purchase));
    }

    private static IEnumerable<string> BattingLines(BookletSource source)
    {
        if (source.Plan.Needs.Batting is not { } batting)
        {
            yield return source.Say("print.batting.none");
            yield break;
        }

        yield return source.Say("print.batting.size", ("width", batting.Width), ("height", batting.Height), ("overhang", source.Plan.Backing.Overhang));
        yield return batting.Package is { } package
            ? source.Say(
                "print.batting.package",
                ("name", Message.Of($"batting.{package.Name}")),
                ("width", Told(source, package.Width)),
                ("height", Told(source, package.Height))
            )
            : source.Say("print.batting.roll");
    }

    // Packages are made in whole inches; in centimeters the whole one below is as near as their makers are.
    private static Length Told(BookletSource source, Length side) =>
        source.Language.Units.Sizes == LengthUnit.Centimeter ? side.RoundDownTo(Length.Millimeters(10)) : side;

    private static IEnumerable<string> BindingLines(BookletSource source)
    {
        var binding = source.Plan.Binding;
        var label = source.Plan.Pieces.First(piece => piece.Id == binding.Piece).Label;
        if (binding.Grain != CutGrain.Bias)
        {
            yield return source.Say(
                "print.binding.join",
                ("strips", binding.Strips),
                ("width", binding.StripWidth),
                ("label", label),
                ("wanted", binding.Wanted),
                ("perimeter", binding.Perimeter),
                ("allowance", binding.Allowance)
            );
            yield break;
        }

        yield return source.Say("print.binding.bias.cut", ("squares", binding.Strips), ("label", label), ("seam", source.Plan.Seam));
        yield return source.Say(
            "print.binding.bias.tube",
            ("squares", binding.Strips),
            ("rounds", binding.Rounds),
            ("width", binding.StripWidth),
            ("wanted", binding.Wanted),
            ("perimeter", binding.Perimeter),
            ("allowance", binding.Allowance)
        );
    }
}
