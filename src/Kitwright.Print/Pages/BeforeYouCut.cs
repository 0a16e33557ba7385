using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;

namespace Kitwright.Print.Pages;

/// <summary>Cautions for cutter and iron, how the booklet speaks, and the square that proves the printer's scale.</summary>
internal static class BeforeYouCut
{
    /// <summary>One inch on paper, exactly.</summary>
    public const double Inch = 72;

    private const double FiveCentimeters = 50 * Inch / 25.4;

    public static Section Of(BookletSource source) =>
        Section.Titled(
            source.Say("print.before"),
            Texts.Body(source.Say("print.before.makers")),
            new Row([new(null, Cautions(source, "cutter", 8)), new(null, Cautions(source, "iron", 6))], 24),
            Texts.Heading(source.Say("print.reading")),
            List(source, "print.reading", 5),
            Texts.Heading(source.Say("print.square")),
            new Row([new(SideOf(source) + 2, TestSquare(source)), new(null, Texts.Body(source.Say("print.square.use")))], 16)
        );

    /// <summary>The cautions of the cutter alone, where cuts are told without the rest of a booklet.</summary>
    public static Stack Cutter(BookletSource source) => Stack.Of(6, Texts.Body(source.Say("print.before.makers")), Cautions(source, "cutter", 8));

    private static Stack Cautions(BookletSource source, string tool, int count) =>
        Stack.Of(6, Texts.Heading(source.Say("print.caution." + tool)), List(source, "print.caution." + tool, count));

    private static Stack List(BookletSource source, string key, int count) =>
        new(
            [
                .. Enumerable
                    .Range(1, count)
                    .Select(i => new Row([new(6, Bullet()), new(null, Texts.Body(source.Say($"{key}.{i}", ("seam", source.Plan.Seam), ("step", source.Plan.RulerStep))))], 6)),
            ],
            3
        );

    private static Picture Bullet()
    {
        var middle = Look.Body.Baseline - (Look.Body.CapHeight / 2);
        var dot = new Shape(Outline.Circle(new(2, middle), 1.6), Paint.Of(Look.Accent), null) { Role = Role.Decoration };
        return new(dot, 4, Look.Body.Leading);
    }

    private static double SideOf(BookletSource source) => source.Language.Units.Sizes == LengthUnit.Centimeter ? FiveCentimeters : Inch;

    private static Picture TestSquare(BookletSource source)
    {
        var side = SideOf(source);
        var square = new Shape(Outline.Rectangle(new(1, 1, side, side)), null, Look.Edge)
        {
            Role = Role.Figure(source.Say("print.alt.square")),
        };
        return new(square, side + 2, side + 2);
    }
}
