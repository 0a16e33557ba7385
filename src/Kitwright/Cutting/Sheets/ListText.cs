using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Stock;

namespace Kitwright.Cutting.Sheets;

/// <summary>
/// Goes through a separated text whose first line names its columns: comma, semicolon or tab; UTF-8, UTF-16 or
/// Windows-1252; within <see cref="TableLimits"/>.
/// </summary>
internal static class ListText
{
    /// <summary>The whole text, in whatever encoding it is; empty where it is larger than any list.</summary>
    public static string Of(byte[] bytes)
    {
        if (TableText.TooBig(bytes) is not null)
        {
            return "";
        }

        using var text = TableText.Open(bytes);
        return text.ReadToEnd();
    }

    public static ImmutableArray<Finding> Read(
        byte[] bytes,
        ListMeasure measure,
        ImmutableArray<string> required,
        ImmutableArray<string> optional,
        Action<ListCells> take
    )
    {
        if (TableText.TooBig(bytes) is { } tooBig)
        {
            return [tooBig];
        }

        var findings = new FindingList();
        var separator = TableText.SeparatorOf(bytes);
        using var text = TableText.Open(bytes);
        var table = new CsvText(text, separator);
        ListColumns? columns = null;
        for (var rows = 0; rows <= TableLimits.Rows && table.TryNext(out var row); )
        {
            if (row.IsBlank)
            {
                continue;
            }

            if (columns is null)
            {
                var matched = ListColumns.Match(row, required, optional);
                if (matched.Value is null)
                {
                    return matched.Findings;
                }

                columns = matched.Value;
                continue;
            }

            if (++rows > TableLimits.Rows)
            {
                findings.AddFirst(Finding.Of("stock.too-many-lines", $"line {row.Line}", ("limit", TableLimits.Rows)));
                break;
            }

            take(new(row, columns, measure, commaIsPoint: separator != ',', findings));
        }

        if (table.Fault is { } fault)
        {
            findings.AddFirst(fault);
        }
        else if (columns is null)
        {
            findings.Add(Finding.Of("cutlist.empty", "line 1", ("columns", string.Join(", ", required))));
        }

        return findings.ToImmutable();
    }
}
