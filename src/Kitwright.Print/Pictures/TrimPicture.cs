using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Pressing;

namespace Kitwright.Print.Pictures;

/// <summary>Where the ruler lies when a unit is squared up: its corner on the unit's, one line on the seam sewn last.</summary>
public static class TrimPicture
{
    private const double Beyond = 0.18;
    private const double Ticks = 1;

    /// <summary>As large as fits into a square, in points.</summary>
    /// <param name="leftHanded">The ruler is held by the right hand, and the cutter runs along its left edge.</param>
    public static Picture Of(StepPicture step, Recipe recipe, double side, bool leftHanded = false)
    {
        var size = UnitDrawing.Size(step.Plan, recipe);
        double seam = step.Plan.Seam.InInches.ToDouble(),
            wide = size.Width + (2 * seam),
            high = size.Height + (2 * seam),
            scale = side / (Math.Max(wide, high) * (1 + Beyond)),
            over = Math.Max(wide, high) * Beyond;
        // The unit stands at the lower left of the ruler's corner; y runs down.
        var unit = new Group([UnitDrawing.Of(step.Plan, recipe, step.Fill, Look.Seam)])
        {
            Transform = new(scale, 0, 0, scale, seam * scale, seam * scale),
        };
        var toPage = new Affine(scale, 0, 0, -scale, seam * scale, (size.Height + seam) * scale);
        var last = Measured(step.Seams.Of(recipe.Id).Seams, leftHanded);
        var raw = Outline.Rectangle(new(0, 0, wide * scale, high * scale));
        return new(
            new Group(
                [
                    new Shape(raw, Paint.Of(Look.Wash), Look.Dashes),
                    unit,
                    .. last is null ? Array.Empty<Node>() : [SeamLine(last, toPage)],
                    new Group([.. Ruler(wide * scale, high * scale, over * scale, scale)])
                    {
                        Transform = leftHanded ? new(-1, 0, 0, 1, wide * scale, 0) : Affine.Identity,
                    },
                ]
            ),
            (wide + over) * scale,
            (high + over) * scale
        );
    }

    /// <summary>The seam that is measured from: of two alike the one beside the edge that the ruler trims, else the last.</summary>
    private static TracedSeam? Measured(ImmutableArray<TracedSeam> seams, bool leftHanded) =>
        seams.MaxBy(seam =>
            IsUpright(seam) ? (leftHanded ? -seam.From.X : seam.From.X)
            : Math.Abs(seam.From.Y - seam.To.Y) < Spot.Near ? seam.From.Y
            : seam.Seam.Verb
        );

    private static bool IsUpright(TracedSeam seam) => Math.Abs(seam.From.X - seam.To.X) < Spot.Near;

    private static Shape SeamLine(TracedSeam seam, Affine toPage) =>
        new(Outline.Line(toPage.Apply(new(seam.From.X, seam.From.Y)), toPage.Apply(new(seam.To.X, seam.To.Y))), null, new(Look.Accent, 2));

    /// <summary>The ruler's two edges along the trim, its body outward to the lower left, a line to each inch.</summary>
    private static IEnumerable<Node> Ruler(double wide, double high, double over, double inch)
    {
        yield return new Shape(Outline.Polygon(new(-over / 3, 0), new(wide, 0), new(wide, high + (over / 3)), new(-over / 3, high + (over / 3))), null, new(Look.Ink, 1));
        for (var x = wide - inch; x > 0; x -= inch * Ticks)
        {
            yield return new Shape(Outline.Line(new(x, 0), new(x, 5)), null, new(Look.Ink, 0.6));
        }

        for (var y = inch; y < high; y += inch * Ticks)
        {
            yield return new Shape(Outline.Line(new(wide - 5, y), new(wide, y)), null, new(Look.Ink, 0.6));
        }
    }
}
