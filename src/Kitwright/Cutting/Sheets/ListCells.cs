using System.Numerics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Stock;

namespace Kitwright.Cutting.Sheets;

/// <summary>The cells of one line of a list as values; what cannot be read is a finding beside the line, and null.</summary>
internal sealed class ListCells(TableRow row, ListColumns columns, ListMeasure measure, bool commaIsPoint, FindingList findings)
{
    private const int LongestLabel = 80;

    public int Line => row.Line;

    public void Report(string rule, params ReadOnlySpan<(string Name, object Value)> slots) =>
        findings.Add(Finding.Of(rule, $"line {row.Line}", slots));

    /// <summary>1 to 80 characters that print.</summary>
    public string? Label()
    {
        var text = columns.Cell(row, "label");
        if (text.Length == 0 || text.Length > LongestLabel || text.Any(char.IsControl))
        {
            Report("cutlist.label", ("most", LongestLabel));
            return null;
        }

        return text;
    }

    /// <summary>A measure above zero.</summary>
    /// <param name="label">Whose measure, for the finding.</param>
    public Length? Measure(string column, string label)
    {
        var text = Number(column);
        if (!measure.TryRead(text, out var length))
        {
            Report(
                measure.Unit is null ? "cutlist.measure" : "cutlist.whole",
                ("column", column),
                ("label", label),
                ("text", text.Length == 0 ? "–" : text)
            );
            return null;
        }

        if (length.Sign <= 0)
        {
            Report("cutlist.not-above-zero", ("column", column), ("label", label), ("text", text));
            return null;
        }

        return length;
    }

    public bool IsMetric(string column) => measure.Unit is null && ListMeasure.IsMetric(columns.Cell(row, column));

    /// <summary>A whole number from 0 to a thousand million; <paramref name="absent"/> where the cell is empty.</summary>
    public int? Count(string label, int? absent = null)
    {
        var text = columns.Cell(row, "count");
        if (text.Length == 0 && absent is not null)
        {
            return absent;
        }

        if (!RationalText.TryParse(text, out var number) || !number.IsInteger || number.Sign < 0 || number.Numerator > new BigInteger(1_000_000_000))
        {
            Report("cutlist.count", ("label", label), ("text", text.Length == 0 ? "–" : text));
            return null;
        }

        return (int)number.Numerator;
    }

    /// <summary>Yes or no; <paramref name="absent"/> where the cell is empty.</summary>
    public bool? Turn(string label, bool absent) => YesOrNo("turn", "cutlist.turn", label, absent);

    /// <summary>Yes or no; no where the cell is empty.</summary>
    public bool? Match(string label) => YesOrNo("match", "cutlist.match", label, absent: false);

    private bool? YesOrNo(string column, string rule, string label, bool absent)
    {
        switch (columns.Cell(row, column).ToLowerInvariant())
        {
            case "":
                return absent;
            case "yes" or "y" or "1" or "true":
                return true;
            case "no" or "n" or "0" or "false":
                return false;
            default:
                Report(rule, ("label", label), ("text", columns.Cell(row, column)));
                return null;
        }
    }

    /// <summary>Any text of the cell, trimmed.</summary>
    public string Text(string column) => columns.Cell(row, column);

    public string Number(string column)
    {
        var text = columns.Cell(row, column);
        return commaIsPoint && !text.Contains('.') ? text.Replace(',', '.') : text;
    }
}
