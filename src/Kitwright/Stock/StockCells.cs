using System.Numerics;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Stock;

/// <summary>The cells of one row as values; what cannot be read becomes a finding beside the line, and null.</summary>
internal sealed class StockCells(TableRow row, StockColumns columns, bool commaIsPoint, FindingList findings)
{
    private const int LongestKey = 80;
    private const int LongestName = 200;

    private static readonly Length LongestBolt = Measure.Length.Yards(10_000);
    private static readonly Length WidestCloth = Measure.Length.Inches(400);
    private const long HighestPrice = 100_000_000;

    public int Line => row.Line;

    public void Report(string rule, params ReadOnlySpan<(string Name, object Value)> slots) =>
        findings.Add(Finding.Of(rule, $"line {row.Line}", slots));

    /// <summary>A number or mark, trimmed: 1 to 80 characters.</summary>
    public string? Key(StockColumn column, bool optional = false) => Words(column, LongestKey, optional);

    public string? Name(StockColumn column) => Words(column, LongestName, optional: true);

    public bool IsEmpty(StockColumn column) => Raw(column).Length == 0;

    /// <summary>Trimmed text, or null where there is none or a formula.</summary>
    public string? Text(StockColumn column)
    {
        var text = Raw(column);
        if (text.StartsWith('='))
        {
            Report("stock.formula", ("column", StockColumns.NameOf(column)));
            return null;
        }

        return text.Length == 0 ? null : text;
    }

    private string Raw(StockColumn column) =>
        columns.Positions.TryGetValue(column, out var at) && at < row.Cells.Length ? row.Cells[at].Trim() : "";

    /// <summary>A length on hand or of a new bolt (bare: yards), or any other (bare: inches), rounded down to the stored grid.</summary>
    public Length? Length(StockColumn column, bool optional = false)
    {
        if (Number(column, optional) is not { } text)
        {
            return null;
        }

        var ofBolts = column is StockColumn.Yards or StockColumn.PutUp;
        if (!LengthText.TryParse(text, out var length, ofBolts ? LengthUnit.Yard : LengthUnit.Inch))
        {
            Report("stock.not-a-length", ("column", StockColumns.NameOf(column)), ("text", text));
            return null;
        }

        var mayBeZero = column == StockColumn.Yards;
        if (length.Sign < 0 || (length.IsZero && !mayBeZero))
        {
            Report(mayBeZero ? "stock.negative" : "stock.not-above-zero", ("column", StockColumns.NameOf(column)), ("text", text));
            return null;
        }

        var most = ofBolts ? LongestBolt : WidestCloth;
        if (length > most)
        {
            Report("stock.too-long", ("column", StockColumns.NameOf(column)), ("text", text), ("most", most));
            return null;
        }

        return Stored(length);
    }

    /// <summary>Minor units: "12.99" or "$12.99" is 1299.</summary>
    public long? Price(StockColumn column)
    {
        if (Number(column, optional: true)?.Trim('$', '€', '£', ' ') is not { } text)
        {
            return null;
        }

        if (!RationalText.TryParse(text, out var price) || !(price * 100).IsInteger)
        {
            Report("stock.not-a-price", ("column", StockColumns.NameOf(column)), ("text", text));
            return null;
        }

        if (price.Sign < 0 || price * 100 > HighestPrice)
        {
            Report(price.Sign < 0 ? "stock.negative" : "stock.price-too-high", ("column", StockColumns.NameOf(column)), ("text", text));
            return null;
        }

        return (long)(price * 100).Numerator;
    }

    /// <summary>"#rrggbb" in lower case; the sign may be missing.</summary>
    public string? Color(StockColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        var digits = text.TrimStart('#');
        if (digits.Length != 6 || !digits.All(char.IsAsciiHexDigit))
        {
            Report("stock.not-a-color", ("column", StockColumns.NameOf(column)), ("text", text));
            return null;
        }

        return "#" + digits.ToLowerInvariant();
    }

    public PrintKind? Print(StockColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        var name = text.Replace(" ", "").Replace("-", "");
        if (!name.All(char.IsAsciiLetter) || !Enum.TryParse<PrintKind>(name, ignoreCase: true, out var kind))
        {
            Report("stock.not-a-print", ("text", text));
            return null;
        }

        return kind;
    }

    /// <summary>"one-way", "two-way" or "any".</summary>
    public PrintDirection? Direction(StockColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        switch (text.Replace(" ", "").Replace("-", "").ToLowerInvariant())
        {
            case "oneway":
                return PrintDirection.OneWay;
            case "twoway":
                return PrintDirection.TwoWay;
            case "any":
                return PrintDirection.Any;
            default:
                Report("stock.not-a-direction", ("text", text));
                return null;
        }
    }

    /// <summary>"yes" or "no", and what else says so.</summary>
    public bool? YesOrNo(StockColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        switch (text.ToLowerInvariant())
        {
            case "yes" or "y" or "1" or "true":
                return true;
            case "no" or "n" or "0" or "false":
                return false;
            default:
                Report("stock.not-yes-or-no", ("column", StockColumns.NameOf(column)), ("text", text));
                return null;
        }
    }

    public int? Seed(StockColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (!RationalText.TryParse(text, out var seed) || !seed.IsInteger || seed.Sign < 0 || seed > int.MaxValue)
        {
            Report("stock.not-a-seed", ("text", text));
            return null;
        }

        return (int)seed.Numerator;
    }

    private string? Words(StockColumn column, int most, bool optional)
    {
        var text = Text(column);
        if (text is null)
        {
            if (!optional && IsEmpty(column))
            {
                Report("stock.value-missing", ("column", StockColumns.NameOf(column)));
            }

            return null;
        }

        if (text.Length > most || text.Any(char.IsControl))
        {
            Report("stock.not-a-name", ("column", StockColumns.NameOf(column)), ("most", most));
            return null;
        }

        return text;
    }

    private string? Number(StockColumn column, bool optional)
    {
        var text = Text(column);
        if (!optional && IsEmpty(column))
        {
            Report("stock.value-missing", ("column", StockColumns.NameOf(column)));
        }

        return commaIsPoint && text is not null && !text.Contains('.') ? text.Replace(',', '.') : text;
    }

    // Down, so that the record never promises more cloth than there is; by less than 1/8128 in.
    private static Length Stored(Length length) =>
        Measure.Length.Ticks((long)(length.InInches * Measure.Length.TicksPerInch).Floor());
}
