using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>What a column of a stock file may hold.</summary>
public enum StockColumn
{
    Fabric,
    Name,
    Lot,
    Bolt,
    Width,
    Yards,
    Price,
    Color,
    Print,
    Second,
    Seed,
    PutUp,
    Direction,
    RepeatAlong,
    RepeatAcross,
    Panel,
    TwoSided,
}

/// <summary>Which column of a file holds what: by name, or as matched by hand.</summary>
/// <param name="Positions">Column index by what it holds, counted from 0.</param>
public sealed record StockColumns(ImmutableSortedDictionary<StockColumn, int> Positions)
{
    /// <summary>Columns without which a row is no bolt.</summary>
    public static ImmutableArray<StockColumn> Required { get; } =
    [
        StockColumn.Fabric,
        StockColumn.Lot,
        StockColumn.Width,
        StockColumn.Yards,
        StockColumn.Price,
        StockColumn.Color,
    ];

    /// <summary>Names in the header, lower case; the first is the one that messages use.</summary>
    private static readonly ImmutableDictionary<StockColumn, ImmutableArray<string>> Names = new Dictionary<
        StockColumn,
        ImmutableArray<string>
    >
    {
        [StockColumn.Fabric] = ["fabric"],
        [StockColumn.Name] = ["name"],
        [StockColumn.Lot] = ["lot"],
        [StockColumn.Bolt] = ["bolt"],
        [StockColumn.Width] = ["width"],
        [StockColumn.Yards] = ["yards", "yd", "yds"],
        [StockColumn.Price] = ["price"],
        [StockColumn.Color] = ["color", "colour"],
        [StockColumn.Print] = ["print"],
        [StockColumn.Second] = ["second"],
        [StockColumn.Seed] = ["seed"],
        [StockColumn.PutUp] = ["put-up", "putup"],
        [StockColumn.Direction] = ["direction"],
        [StockColumn.RepeatAlong] = ["repeat-along"],
        [StockColumn.RepeatAcross] = ["repeat-across"],
        [StockColumn.Panel] = ["panel"],
        [StockColumn.TwoSided] = ["two-sided"],
    }.ToImmutableDictionary();

    public static string NameOf(StockColumn column) => Names[column][0];

    /// <summary>The header's own name of each column that has a usual one; the first where it stands more than once.</summary>
    public static ImmutableSortedDictionary<StockColumn, string> Recognized(TableRow header) =>
        Enum.GetValues<StockColumn>()
            .Select(column => (Column: column, Name: header.Cells.FirstOrDefault(cell => Names[column].Contains(Key(cell)))))
            .Where(found => found.Name is not null)
            .ToImmutableSortedDictionary(found => found.Column, found => found.Name!.Trim());

    /// <summary>The column of a usual name, in either case; null where there is none.</summary>
    public static StockColumn? Named(string name) =>
        Names.Where(pair => pair.Value.Contains(Key(name))).Select(pair => (StockColumn?)pair.Key).FirstOrDefault();

    /// <summary>Those of some names by hand that a header has; names of an earlier file need not fit this one.</summary>
    public static ImmutableDictionary<StockColumn, string> Fitting(
        ImmutableArray<string> header,
        ImmutableDictionary<StockColumn, string> byHand
    ) => byHand.Where(pair => header.Any(cell => Key(cell) == Key(pair.Value))).ToImmutableDictionary();

    /// <summary>
    /// Finds the columns in a header. <paramref name="byHand"/> names the header's own word for a column and goes
    /// before the usual names; an empty word leaves the column out.
    /// </summary>
    public static Checked<StockColumns> Match(
        TableRow header,
        ImmutableDictionary<StockColumn, string>? byHand = null
    )
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var positions = ImmutableSortedDictionary.CreateBuilder<StockColumn, int>();
        foreach (var column in Enum.GetValues<StockColumn>())
        {
            ImmutableArray<string> names = byHand is not null && byHand.TryGetValue(column, out var own)
                ? [own.Trim().ToLowerInvariant()]
                : Names[column];
            if (names is [""])
            {
                if (Required.Contains(column))
                {
                    findings.Add(Finding.Of("stock.column-missing", Place(header), ("column", NameOf(column))));
                }

                continue;
            }

            int[] found = [.. Enumerable.Range(0, header.Cells.Length).Where(i => names.Contains(Key(header.Cells[i])))];
            if (found.Length > 1)
            {
                findings.Add(Finding.Of("stock.column-twice", Place(header), ("column", names[0])));
            }
            else if (found.Length == 1)
            {
                positions.Add(column, found[0]);
            }
            else if (Required.Contains(column) || byHand?.ContainsKey(column) == true)
            {
                findings.Add(Finding.Of("stock.column-missing", Place(header), ("column", names[0])));
            }
        }

        return findings.Count > 0
            ? new(null, findings.ToImmutable())
            : Checked<StockColumns>.Of(new(positions.ToImmutable()));
    }

    private static string Key(string name) => name.Trim().ToLowerInvariant();

    private static string Place(TableRow header) => $"line {header.Line}";
}
