using System.Collections.Immutable;
using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>Whether a template's outline differs from its mirror image however it is turned.</summary>
internal static class TemplateHand
{
    // Inches; lines of templates are drawn, and nothing is measured by them.
    private const double Same = 1e-6;

    /// <param name="line">Counterclockwise.</param>
    public static bool Has(ImmutableArray<Spot> line)
    {
        var (own, other) = (Sides(line), Sides(Mirror(line)));
        return !Enumerable.Range(0, own.Length).Any(from => own.Select((side, i) => Near(side, other[(i + from) % other.Length])).All(near => near));
    }

    /// <summary>The mirror image, counterclockwise too.</summary>
    public static ImmutableArray<Spot> Mirror(ImmutableArray<Spot> line) => [.. line.Reverse().Select(p => new Spot(-p.X, p.Y))];

    /// <summary>Length of each side and its product with the next: the same for one shape however it lies.</summary>
    private static (double Length, double Dot, double Cross)[] Sides(ImmutableArray<Spot> line) =>
        [
            .. line.Select((p, i) =>
            {
                var (side, next) = (line[(i + 1) % line.Length] - p, line[(i + 2) % line.Length] - line[(i + 1) % line.Length]);
                return (side.Length, Spot.Dot(side, next), Spot.Cross(side, next));
            }),
        ];

    private static bool Near((double Length, double Dot, double Cross) x, (double Length, double Dot, double Cross) y) =>
        Math.Abs(x.Length - y.Length) < Same && Math.Abs(x.Dot - y.Dot) < Same && Math.Abs(x.Cross - y.Cross) < Same;
}
