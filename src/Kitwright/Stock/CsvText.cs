using System.Collections.Immutable;
using System.Text;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>
/// Comma-separated text, one record at a time: RFC 4180 (Y. Shafranovich, "Common Format and MIME Type for
/// Comma-Separated Values Files", 2005), with any of CR LF, LF and CR as the end of a line.
/// </summary>
/// <remarks>
/// Lenient where files of the trade are: blanks round a quoted cell, and a quote inside a cell that does not begin
/// with one, are kept as text. A quoted cell that never ends stops the reading with <see cref="Fault"/>.
/// </remarks>
public sealed class CsvText(TextReader text, char separator) : ITable
{
    private readonly StringBuilder cell = new();
    private readonly ImmutableArray<string>.Builder cells = ImmutableArray.CreateBuilder<string>();
    private int line = 1;

    /// <summary>Why the reading stopped before the end; null where it did not.</summary>
    public Finding? Fault { get; private set; }

    /// <summary>The next record, or false at the end or after a fault.</summary>
    public bool TryNext(out TableRow row)
    {
        row = default;
        if (Fault is not null || text.Peek() < 0)
        {
            return false;
        }

        var start = line;
        cells.Clear();
        do
        {
            if (!TryCell(start))
            {
                return false;
            }
        }
        while (text.Peek() == separator && text.Read() >= 0);

        EndLine();
        row = new(start, cells.ToImmutable());
        return true;
    }

    private bool TryCell(int start)
    {
        cell.Clear();
        var whole = text.Peek() == '"' ? Quoted() : Bare();
        if (!whole)
        {
            Fault ??= Finding.Of("stock.unclosed-quote", $"line {start}");
            return false;
        }

        cells.Add(cell.ToString());
        if (cells.Count > TableLimits.Cells)
        {
            Fault = Finding.Of("stock.too-many-cells", $"line {start}", ("limit", TableLimits.Cells));
        }

        return Fault is null;
    }

    private bool Bare()
    {
        while (text.Peek() is var next && next >= 0 && next != separator && next is not ('\r' or '\n'))
        {
            Append();
        }

        return Fault is null;
    }

    private bool Quoted()
    {
        text.Read();
        while (text.Peek() >= 0 && Fault is null)
        {
            if (text.Peek() != '"')
            {
                if (text.Peek() is '\r' or '\n')
                {
                    EndLine();
                    cell.Append('\n');
                }
                else
                {
                    Append();
                }

                continue;
            }

            text.Read();
            if (text.Peek() != '"')
            {
                return Bare();
            }

            Append();
        }

        return false;
    }

    private void Append()
    {
        cell.Append((char)text.Read());
        if (cell.Length > TableLimits.Characters)
        {
            Fault = Finding.Of("stock.cell-too-long", $"line {line}", ("limit", TableLimits.Characters));
        }
    }

    private void EndLine()
    {
        var end = text.Read();
        if (end == '\r' && text.Peek() == '\n')
        {
            text.Read();
        }

        if (end >= 0)
        {
            line++;
        }
    }
}
