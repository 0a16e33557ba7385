using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Columns by their patterns, so that what a dive finds again, which is most of what it finds, costs no memory.
/// </summary>
internal sealed class ColumnPool
{
    // Beyond, all are given up: memory stays within tens of megabytes.
    private const int MostKept = 40_000;

    private readonly StripGrid grid;
    private readonly PatternCell[] cells;
    private readonly Dictionary<StripPattern, Column> columns;
    private readonly Dictionary<StripPattern, Column>.AlternateLookup<ReadOnlySpan<PatternCell>> byCells;

    public ColumnPool(StripGrid grid)
    {
        this.grid = grid;
        cells = new PatternCell[grid.Ways.Length];
        columns = new(new ByCells());
        byCells = columns.GetAlternateLookup<ReadOnlySpan<PatternCell>>();
    }

    /// <inheritdoc cref="Column.Proper"/>
    public Column Proper(ReadOnlySpan<int> timesOfWay, ReadOnlySpan<int> wanted)
    {
        ReadOnlySpan<PatternCell> these = cells.AsSpan(0, Column.ProperCells(grid, timesOfWay, wanted, cells));
        if (byCells.TryGetValue(these, out var known))
        {
            return known;
        }

        if (columns.Count >= MostKept)
        {
            columns.Clear();
        }

        var column = Column.OfCells(grid, these);
        columns.Add(column.Pattern, column);
        return column;
    }

    /// <summary>Within one grid the cells give a pattern its height.</summary>
    private sealed class ByCells : IEqualityComparer<StripPattern>, IAlternateEqualityComparer<ReadOnlySpan<PatternCell>, StripPattern>
    {
        public bool Equals(StripPattern? x, StripPattern? y) => x is null ? y is null : y is not null && Equals(x.Cells.AsSpan(), y);

        public bool Equals(ReadOnlySpan<PatternCell> alternate, StripPattern other) => alternate.SequenceEqual(other.Cells.AsSpan());

        public int GetHashCode(StripPattern pattern) => GetHashCode(pattern.Cells.AsSpan());

        public int GetHashCode(ReadOnlySpan<PatternCell> alternate)
        {
            unchecked
            {
                var hash = 17;
                foreach (var cell in alternate)
                {
                    hash = (hash * 31) + (cell.Way * 7919) + cell.Times;
                }

                return hash;
            }
        }

        public StripPattern Create(ReadOnlySpan<PatternCell> alternate) => throw new NotSupportedException("Patterns are added with their height.");
    }
}
