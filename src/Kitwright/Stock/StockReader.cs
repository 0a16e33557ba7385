using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>
/// Turns the rows of a table into a shelf, one after the other. What a fabric is (name, width, price, colors) may
/// stand on its first row only; where it stands again it must be the same.
/// </summary>
/// <param name="byHand">The table's own names of columns, where they are not the usual ones.</param>
/// <param name="commaIsPoint">Whether a comma in a number is its decimal point.</param>
public sealed class StockReader(ImmutableDictionary<StockColumn, string>? byHand, bool commaIsPoint)
{
    private readonly FindingList findings = new();
    private readonly Dictionary<string, FabricRow> fabrics = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> boltLines = new(StringComparer.Ordinal);
    private readonly ImmutableArray<Bolt>.Builder bolts = ImmutableArray.CreateBuilder<Bolt>();
    private readonly List<string> order = [];
    private StockColumns? columns;
    private bool headerRead;
    private int rows;

    /// <summary>All of a table: the shelf, or what keeps it from being one.</summary>
    public static Checked<Shelf> Read(ITable table, ImmutableDictionary<StockColumn, string>? byHand, bool commaIsPoint)
    {
        var reader = new StockReader(byHand, commaIsPoint);
        while (!reader.Full && table.TryNext(out var row))
        {
            reader.Add(row);
        }

        return reader.Finish(table.Fault);
    }

    /// <summary>True where no further row can change the outcome.</summary>
    public bool Full { get; private set; }

    public void Add(TableRow row)
    {
        if (row.IsBlank || Full)
        {
            return;
        }

        if (!headerRead)
        {
            headerRead = true;
            var matched = StockColumns.Match(row, byHand);
            columns = matched.Value;
            findings.AddRange(matched.Findings);
            Full = columns is null;
            return;
        }

        if (++rows > TableLimits.Rows)
        {
            findings.AddFirst(Finding.Of("stock.too-many-lines", $"line {row.Line}", ("limit", TableLimits.Rows)));
            Full = true;
            return;
        }

        AddBolt(new StockCells(row, columns!, commaIsPoint, findings));
    }

    /// <param name="fault">What stopped the table itself, if anything did.</param>
    public Checked<Shelf> Finish(Finding? fault)
    {
        if (fault is not null)
        {
            findings.AddFirst(fault);
        }
        else if (!headerRead)
        {
            findings.Add(Finding.Of("stock.empty", "file"));
        }

        return findings.HasFaults
            ? new(null, findings.ToImmutable())
            : new(
                new([.. order.Select(number => fabrics[number].ToFabric())], bolts.ToImmutable()),
                findings.ToImmutable()
            );
    }

    private void AddBolt(StockCells cells)
    {
        if (cells.Key(StockColumn.Fabric) is not { } number)
        {
            return;
        }

        if (!fabrics.TryGetValue(number, out var fabric))
        {
            fabric = new(number);
            fabrics.Add(number, fabric);
            order.Add(number);
        }

        fabric.Take(cells);
        if (cells.Length(StockColumn.Yards) is not { } onHand)
        {
            return;
        }

        var id = cells.Key(StockColumn.Bolt, optional: true) ?? NextId(number);
        if (!boltLines.TryAdd(id, cells.Line))
        {
            cells.Report("stock.bolt-twice", ("bolt", id), ("first", boltLines[id]));
            return;
        }

        bolts.Add(new(id, number, Lot(cells, id), onHand));
    }

    private string NextId(string number)
    {
        var count = fabrics[number].UnnamedBolts++;
        return $"{number}-{count + 1}";
    }

    // An unmarked receipt is a lot of its own; the bolt's id in parentheses can stand for it, and cannot be a mark.
    private static string Lot(StockCells cells, string bolt) =>
        cells.Key(StockColumn.Lot, optional: true) ?? $"({bolt})";
}
