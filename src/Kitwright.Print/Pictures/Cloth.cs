using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>A seam as pressed: where, and to which side its allowances go.</summary>
/// <param name="Toward">A step of one inch to that side; meaningless where the seam is pressed open.</param>
internal readonly record struct PressMark(Place At, Place Toward, bool Open)
{
    public PressMark Moved(Affine by) => new(by.Apply(At), by.Apply(At + Toward) - by.Apply(At), Open);
}

/// <summary>What lies on the table during a step, near enough to draw arrows on: convex outlines, seams and marks.</summary>
internal sealed record Cloth(
    ImmutableArray<ImmutableArray<Place>> Bottom,
    ImmutableArray<ImmutableArray<Place>> Top,
    ImmutableArray<(Place From, Place To)> Seams,
    ImmutableArray<PressMark> Marks
)
{
    public static Cloth Rectangle(double left, double bottom, double right, double top) =>
        new([[new(left, bottom), new(right, bottom), new(right, top), new(left, top)]], [], [], []);

    public Cloth Moved(Affine by) =>
        new(
            [.. Bottom.Select(outline => Moved(outline, by))],
            [.. Top.Select(outline => Moved(outline, by))],
            [.. Seams.Select(seam => (by.Apply(seam.From), by.Apply(seam.To)))],
            [.. Marks.Select(mark => mark.Moved(by))]
        );

    public Cloth Under(Cloth top) => this with { Top = top.Bottom, Marks = [.. Marks, .. top.Marks] };

    public Cloth Sewn(Place from, Place to) => this with { Seams = Seams.Add((from, to)) };

    /// <summary>What lies to the left of a line. Seams go with the side on which they lie.</summary>
    public Cloth LeftOf(Place from, Place to) =>
        this with
        {
            Bottom = Clipped(Bottom, from, to),
            Top = Clipped(Top, from, to),
            Seams = [.. Seams.Where(seam => SideOf(from, to, (seam.From + seam.To) * 0.5) > 0)],
        };

    /// <summary>The top layer folded over the last seam.</summary>
    public Cloth Opened(Plans.PressToward toward)
    {
        if (Seams.IsEmpty || Top.IsEmpty)
        {
            return this;
        }

        var (from, to) = Seams[^1];
        var fold = Reflection(from, to);
        var at = MiddleOn(Top, from, to);
        var step = to - from;
        var left = new Place(-step.Y, step.X) * (1 / Math.Sqrt((step.X * step.X) + (step.Y * step.Y)));
        var bottomIsLeft = Bottom.Sum(outline => Middle.AreaOf(outline) * SideOf(from, to, Middle.Of(outline))) > 0;
        var toBottom = bottomIsLeft ? left : left * -1;
        var mark = new PressMark(at, toward == Plans.PressToward.Bottom ? toBottom : toBottom * -1, toward == Plans.PressToward.Open);
        return new([.. Bottom, .. Top.Select(outline => Moved(outline, fold))], [], [], Marks.Add(mark));
    }

    public static Affine Of(Motion motion) =>
        new(
            motion.XX.ToDouble(),
            motion.YX.ToDouble(),
            motion.XY.ToDouble(),
            motion.YY.ToDouble(),
            motion.DX.ToDouble(),
            motion.DY.ToDouble()
        );

    private static ImmutableArray<Place> Moved(ImmutableArray<Place> outline, Affine by) => [.. outline.Select(by.Apply)];

    private static double SideOf(Place from, Place to, Place place) =>
        ((to.X - from.X) * (place.Y - from.Y)) - ((to.Y - from.Y) * (place.X - from.X));

    // Sutherland and Hodgman, "Reentrant polygon clipping", CACM 17(1), 1974, for one line (from memory).
    private static ImmutableArray<ImmutableArray<Place>> Clipped(ImmutableArray<ImmutableArray<Place>> outlines, Place from, Place to)
    {
        var kept = ImmutableArray.CreateBuilder<ImmutableArray<Place>>();
        foreach (var outline in outlines)
        {
            var corners = ImmutableArray.CreateBuilder<Place>();
            for (var i = 0; i < outline.Length; i++)
            {
                Place p = outline[i],
                    q = outline[(i + 1) % outline.Length];
                double sideP = SideOf(from, to, p),
                    sideQ = SideOf(from, to, q);
                if (sideP >= 0)
                {
                    corners.Add(p);
                }

                if (sideP * sideQ < 0)
                {
                    corners.Add(p + ((q - p) * (sideP / (sideP - sideQ))));
                }
            }

            if (corners.Count > 2)
            {
                kept.Add(corners.ToImmutable());
            }
        }

        return kept.ToImmutable();
    }

    private static Affine Reflection(Place from, Place to)
    {
        var step = to - from;
        var square = (step.X * step.X) + (step.Y * step.Y);
        double cos = ((step.X * step.X) - (step.Y * step.Y)) / square,
            sin = 2 * step.X * step.Y / square;
        return new(cos, sin, sin, -cos, from.X - (cos * from.X) - (sin * from.Y), from.Y - (sin * from.X) + (cos * from.Y));
    }

    /// <summary>The middle of the part of a line that lies on the outlines.</summary>
    private static Place MiddleOn(ImmutableArray<ImmutableArray<Place>> outlines, Place from, Place to)
    {
        var step = to - from;
        var along = new List<double>();
        foreach (var outline in outlines)
        {
            for (var i = 0; i < outline.Length; i++)
            {
                Place p = outline[i],
                    q = outline[(i + 1) % outline.Length];
                double sideP = SideOf(from, to, p),
                    sideQ = SideOf(from, to, q);
                if (sideP != sideQ && sideP * sideQ <= 0)
                {
                    var crossing = p + ((q - p) * (sideP / (sideP - sideQ))) - from;
                    along.Add(((crossing.X * step.X) + (crossing.Y * step.Y)) / ((step.X * step.X) + (step.Y * step.Y)));
                }
            }
        }

        return along.Count == 0 ? (from + to) * 0.5 : from + (step * ((along.Min() + along.Max()) / 2));
    }
}
