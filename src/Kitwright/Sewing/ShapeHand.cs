using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>Names by which equal outlines find each other however they are turned, and an outline its mirror image.</summary>
/// <remarks>For templates, whose curves are chords; straight shapes of a plan have an exact <see cref="Piecing.Handedness"/>.</remarks>
/// <param name="Shape">Equal for outlines that one turn brings to cover each other, to a hundred-thousandth of an inch.</param>
/// <param name="Mirrored">The <see cref="Shape"/> of the mirror image.</param>
internal readonly record struct ShapeHand(string Shape, string Mirrored)
{
    /// <summary>Whether it differs from its mirror image, so that a template of it must lie right side up.</summary>
    public bool HasHand => Shape != Mirrored;

    /// <param name="line">Counterclockwise; no two places the same one after the other.</param>
    public static ShapeHand Of(ImmutableArray<Spot> line) => new(First(line), First([.. line.Reverse().Select(p => new Spot(-p.X, p.Y))]));

    /// <summary>Each side's length and its product with the next, from where the list comes first.</summary>
    private static string First(ImmutableArray<Spot> line)
    {
        var steps = line.Select((p, i) => line[(i + 1) % line.Length] - p).ToArray();
        string[] sides =
        [
            .. steps.Select((step, i) => string.Create(CultureInfo.InvariantCulture, $"{step.Length + 1e-7:0.00000},{Spot.Dot(step, steps[(i + 1) % steps.Length]) + 1e-7:0.00000}")),
        ];
        return Enumerable.Range(0, sides.Length).Select(from => string.Join(';', [.. sides[from..], .. sides[..from]])).Min(StringComparer.Ordinal)!;
    }
}
