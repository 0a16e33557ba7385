using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Stock;

namespace Kitwright.Cutting.Sheets;

/// <summary>Where the columns of a list stand, by name.</summary>
internal sealed class ListColumns(ImmutableDictionary<string, int> positions)
{
    public static Checked<ListColumns> Match(TableRow header, ImmutableArray<string> required, ImmutableArray<string> optional)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var positions = ImmutableDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        for (var at = 0; at < header.Cells.Length; at++)
        {
            var name = header.Cells[at].Trim().ToLowerInvariant();
            if ((required.Contains(name) || optional.Contains(name)) && !positions.TryAdd(name, at))
            {
                findings.Add(Finding.Of("cutlist.column-twice", $"line {header.Line}", ("column", name)));
            }
        }

        foreach (var name in required.Where(name => !positions.ContainsKey(name)))
        {
            findings.Add(Finding.Of("cutlist.column-missing", $"line {header.Line}", ("column", name), ("columns", string.Join(", ", required))));
        }

        return findings.Count > 0 ? new(null, findings.ToImmutable()) : Checked<ListColumns>.Of(new(positions.ToImmutable()));
    }

    /// <summary>The trimmed cell; empty where the column or the cell is not there.</summary>
    public string Cell(TableRow row, string column) =>
        positions.TryGetValue(column, out var at) && at < row.Cells.Length ? row.Cells[at].Trim() : "";
}
