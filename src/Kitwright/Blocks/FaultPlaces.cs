using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Kitwright.Findings;
using Kitwright.Geometry;

namespace Kitwright.Blocks;

/// <summary>Where on a drawing a finding lies: what it says in words, as points to be marked.</summary>
public static partial class FaultPlaces
{
    /// <summary>The corners of a gap, in the drawing's own units; empty for anything else.</summary>
    public static ImmutableArray<Point> Gap(Finding finding) => Points(finding, "corners") is { Length: > 2 } corners ? corners : [];

    /// <summary>The one place that it names, such as a point where two patches overlap; null where there is none.</summary>
    public static Point? At(Finding finding) => Points(finding, "at") is [var at] ? at : null;

    private static ImmutableArray<Point> Points(Finding finding, string slot) =>
        finding.Reason.Slots.TryGetValue(slot, out var value) && value is string text
            ? [.. Pair().Matches(text).Select(m => SurdText.TryParse(m.Groups[1].Value, out var x) && SurdText.TryParse(m.Groups[2].Value, out var y) ? (Point?)new Point(x, y) : null).OfType<Point>()]
            : [];

    [GeneratedRegex(@"\(([^(),]+), ([^(),]+)\)")]
    private static partial Regex Pair();
}
