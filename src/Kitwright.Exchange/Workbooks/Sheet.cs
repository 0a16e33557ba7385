using System.Collections.Immutable;
using System.Globalization;
using System.Xml;
using Kitwright.Findings;
using Kitwright.Stock;

namespace Kitwright.Exchange.Workbooks;

/// <summary>
/// One sheet, row by row, its cells as the text that a person sees in them as far as that matters: numbers as
/// decimals of up to 15 digits, which is what a spreadsheet shows of them, dates as year-month-day, and a formula as
/// an equals sign and its text, since formulas are not worked out.
/// </summary>
internal sealed class Sheet(XmlReader xml, List<string> strings, List<bool> dateStyles) : ITable
{
    private int line;

    public Finding? Fault { get; private set; }

    public bool TryNext(out TableRow row)
    {
        row = default;
        try
        {
            return Fault is null && NextRow(out row);
        }
        catch (Exception fault) when (Workbook.IsOfTheFile(fault))
        {
            Fault = Workbook.FindingOf(fault);
            return false;
        }
    }

    private bool NextRow(out TableRow row)
    {
        row = default;
        while (xml.Read())
        {
            if (xml is not { NodeType: XmlNodeType.Element, LocalName: "row" })
            {
                continue;
            }

            line = int.TryParse(xml.GetAttribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > line ? number : line + 1;
            row = new(line, Cells());
            return Fault is null;
        }

        return false;
    }

    private ImmutableArray<string> Cells()
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        if (xml.IsEmptyElement)
        {
            return [];
        }

        var depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth && Fault is null)
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "c" })
            {
                Put(cells, ColumnOf(xml.GetAttribute("r")) ?? cells.Count, Cell());
            }
        }

        return cells.ToImmutable();
    }

    private void Put(ImmutableArray<string>.Builder cells, int column, string text)
    {
        if (text.Length == 0)
        {
            return;
        }

        if (column >= TableLimits.Cells)
        {
            Fault ??= Finding.Of("stock.too-many-cells", $"line {line}", ("limit", TableLimits.Cells));
            return;
        }

        if (text.Length > TableLimits.Characters)
        {
            Fault ??= Finding.Of("stock.cell-too-long", $"line {line}", ("limit", TableLimits.Characters));
            return;
        }

        while (cells.Count <= column)
        {
            cells.Add("");
        }

        cells[column] = text;
    }

    private string Cell()
    {
        var kind = xml.GetAttribute("t") ?? "n";
        var date = int.TryParse(xml.GetAttribute("s"), NumberStyles.None, CultureInfo.InvariantCulture, out var style) && style < dateStyles.Count && dateStyles[style];
        if (xml.IsEmptyElement)
        {
            return "";
        }

        var (value, formula) = ("", (string?)null);
        var depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType == XmlNodeType.Element)
            {
                switch (xml.LocalName)
                {
                    case "f":
                        formula = "=" + XmlText.Of(xml);
                        break;
                    case "v":
                        value = XmlText.Of(xml);
                        break;
                    case "is":
                        value = XmlText.Of(xml, only: "t");
                        break;
                }
            }
        }

        return formula ?? TextOf(kind, value, date);
    }

    private string TextOf(string kind, string value, bool date) =>
        kind switch
        {
            "s" => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < strings.Count ? strings[index] : "",
            "b" => value == "1" ? "TRUE" : "FALSE",
            "n" => NumberOf(value, date),
            _ => value,
        };

    private static string NumberOf(string value, bool date)
    {
        // Far inside of what a decimal holds; anything beyond stays as it is written and is no length to anybody.
        const double Most = 1e15;
        if (!double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !(Math.Abs(number) < Most))
        {
            return value;
        }

        const double LastDay = 2_958_466;
        return date && number is >= 0 and < LastDay
            ? DateTime.FromOADate(number).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            // The conversion rounds to 15 digits.
            : ((decimal)number).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>"C7" is column 2; null where the cell does not say, and it then follows the one before.</summary>
    private static int? ColumnOf(string? reference)
    {
        var column = 0;
        foreach (var letter in (reference ?? "").TakeWhile(char.IsAsciiLetter).Take(4))
        {
            column = (column * 26) + (char.ToUpperInvariant(letter) - 'A' + 1);
        }

        return column == 0 ? null : column - 1;
    }
}
