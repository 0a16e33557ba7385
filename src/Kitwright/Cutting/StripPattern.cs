using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>What one strip is cut into, in units of a <see cref="StripGrid"/>.</summary>
/// <param name="Height">Never lower than its pieces.</param>
/// <param name="Cells">At most one per way, ascending by way.</param>
public sealed record StripPattern(int Height, ImmutableArray<PatternCell> Cells)
{
    /// <summary>The pattern of these cells, as high as its highest piece and no higher.</summary>
    public static StripPattern Of(StripGrid grid, IEnumerable<PatternCell> cells)
    {
        ImmutableArray<PatternCell> kept = [.. cells.Where(cell => cell.Times > 0).OrderBy(cell => cell.Way)];
        return new(kept.IsEmpty ? 0 : kept.Max(cell => grid.Ways[cell.Way].Height), kept);
    }

    public int UsedWidth(StripGrid grid) => Cells.Sum(cell => cell.Times * grid.Ways[cell.Way].Width);

    public bool Equals(StripPattern? other) =>
        other is not null && Height == other.Height && Cells.AsSpan().SequenceEqual(other.Cells.AsSpan());

    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Height);
        foreach (var cell in Cells)
        {
            hash.Add(cell);
        }

        return hash.ToHashCode();
    }
}

/// <summary>So many pieces lying in one way.</summary>
/// <param name="Way">Index in <see cref="StripGrid.Ways"/>.</param>
public readonly record struct PatternCell(int Way, int Times);

/// <summary>Equal strips.</summary>
public sealed record CutStrips(StripPattern Pattern, int Times)
{
    public static long TotalHeight(IEnumerable<CutStrips> strips) => strips.Sum(s => (long)s.Times * s.Pattern.Height);
}
