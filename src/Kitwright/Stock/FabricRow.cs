using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Stock;

/// <summary>One fabric while its rows are read: each value is taken where it first stands.</summary>
internal sealed class FabricRow(string number)
{
    private readonly Dictionary<StockColumn, (string Text, int Line)> seen = [];
    private string? name;
    private Length? width;
    private long? price;
    private string? color;
    private PrintKind? print;
    private string? second;
    private int? seed;
    private Length? putUp;
    private PrintDirection? direction;
    private Length? repeatAlong;
    private Length? repeatAcross;
    private Length? panel;
    private bool? twoSided;

    /// <summary>How many of its bolts had no id of their own.</summary>
    public int UnnamedBolts { get; set; }

    public void Take(StockCells cells)
    {
        Take(cells, StockColumn.Name, ref name, cells.Name(StockColumn.Name));
        Take(cells, StockColumn.Width, ref width, cells.Length(StockColumn.Width, optional: true));
        Take(cells, StockColumn.Price, ref price, cells.Price(StockColumn.Price));
        Take(cells, StockColumn.Color, ref color, cells.Color(StockColumn.Color));
        Take(cells, StockColumn.Print, ref print, cells.Print(StockColumn.Print));
        Take(cells, StockColumn.Second, ref second, cells.Color(StockColumn.Second));
        Take(cells, StockColumn.Seed, ref seed, cells.Seed(StockColumn.Seed));
        Take(cells, StockColumn.PutUp, ref putUp, cells.Length(StockColumn.PutUp, optional: true));
        Take(cells, StockColumn.Direction, ref direction, cells.Direction(StockColumn.Direction));
        Take(cells, StockColumn.RepeatAlong, ref repeatAlong, cells.Length(StockColumn.RepeatAlong, optional: true));
        Take(cells, StockColumn.RepeatAcross, ref repeatAcross, cells.Length(StockColumn.RepeatAcross, optional: true));
        Take(cells, StockColumn.Panel, ref panel, cells.Length(StockColumn.Panel, optional: true));
        Take(cells, StockColumn.TwoSided, ref twoSided, cells.YesOrNo(StockColumn.TwoSided));
        if (!cells.IsEmpty(StockColumn.RepeatAcross) && repeatAcross > width)
        {
            cells.Report("stock.repeat-too-wide", ("repeat", repeatAcross!.Value), ("width", width!.Value));
        }
        Miss(cells, StockColumn.Width, width is null);
        Miss(cells, StockColumn.Price, price is null);
        Miss(cells, StockColumn.Color, color is null);
    }

    public Fabric ToFabric() =>
        new(
            number,
            name ?? number,
            width!.Value,
            price!.Value,
            color!,
            new(print ?? PrintKind.Solid, second ?? color!, seed ?? SeedOf(number))
        )
        {
            PutUp = putUp,
            Direction = direction ?? PrintDirection.Any,
            RepeatAlong = repeatAlong,
            RepeatAcross = repeatAcross,
            PanelLength = panel,
            TwoSided = twoSided ?? false,
        };

    private void Take<T>(StockCells cells, StockColumn column, ref T? held, T? value)
    {
        if (value is null)
        {
            return;
        }

        var text = cells.Text(column)!;
        if (held is null)
        {
            held = value;
            seen[column] = (text, cells.Line);
        }
        else if (!held.Equals(value))
        {
            cells.Report(
                "stock.two-values",
                ("column", StockColumns.NameOf(column)),
                ("fabric", number),
                ("first", seen[column].Text),
                ("firstLine", seen[column].Line),
                ("second", text)
            );
        }
    }

    // A cell that could not be read has its own finding already.
    private static void Miss(StockCells cells, StockColumn column, bool missing)
    {
        if (missing && cells.IsEmpty(column))
        {
            cells.Report("stock.value-missing", ("column", StockColumns.NameOf(column)));
        }
    }

    // FNV-1a over the characters (G. Fowler, L. C. Noll, P. Vo), so that a fabric's print stays the same.
    private static int SeedOf(string text)
    {
        var hash = 2166136261u;
        foreach (var character in text)
        {
            hash = unchecked((hash ^ character) * 16777619u);
        }

        return (int)(hash & 0x7fffffff);
    }
}
