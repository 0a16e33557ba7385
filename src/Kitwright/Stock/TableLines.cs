using System.Collections.Immutable;

namespace Kitwright.Stock;

/// <summary>Some rows of a table as they stand in it.</summary>
public sealed record TableLines(ImmutableArray<TableRow> Rows)
{
    /// <summary>Reads no further than the last line that is asked for.</summary>
    public static TableLines Of(ITable table, IReadOnlySet<int> lines)
    {
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        var last = lines.DefaultIfEmpty(0).Max();
        while (table.TryNext(out var row) && row.Line <= last)
        {
            if (lines.Contains(row.Line))
            {
                rows.Add(row);
            }
        }

        return new(rows.ToImmutable());
    }
}
