using System.Globalization;
using CsCheck;
using CsvHelper;
using CsvHelper.Configuration;
using Kitwright.Stock;
using Xunit;

namespace Kitwright.Tests.Stock;

/// <summary>The reader of separated text, held against CsvHelper.</summary>
public sealed class CsvTextTest
{
    private static readonly Gen<string> Cell = Gen.OneOf(
        Gen.Const(""),
        Gen.String["ab ,;\"'\n\t½"],
        Gen.String["xyz 0123456789/"]
    );

    [Fact]
    public void What_another_writer_writes_is_read_back() =>
        Gen.Select(Cell.Array[1, 5].Array[1, 6], Gen.Char[",;\t"], Gen.Bool)
            .Sample((rows, separator, carriageReturn) =>
            {
                var text = Written(rows, separator);
                var read = Ours(carriageReturn ? text.Replace("\n", "\r\n") : text, separator);
                Assert.Equal(rows, read);
            });

    [Theory]
    [InlineData("a,b\r\nc,d")]
    [InlineData("a,\"b\"\"c\"\n,\n")]
    [InlineData("\"two\nlines\",x\ny\n")]
    [InlineData("plain \"inside\" text,x\n")]
    public void Reads_as_the_reference_does(string text) =>
        Assert.Equal(Theirs(text), Ours(text, ','));

    [Fact]
    public void Rows_know_the_line_on_which_they_start()
    {
        var csv = new CsvText(new StringReader("a\n\"two\r\nlines\"\nb\rc"), ',');
        var lines = new List<int>();
        while (csv.TryNext(out var row))
        {
            lines.Add(row.Line);
        }

        Assert.Equal([1, 2, 4, 5], lines);
    }

    private static string[][] Ours(string text, char separator)
    {
        var csv = new CsvText(new StringReader(text), separator);
        var rows = new List<string[]>();
        while (csv.TryNext(out var row))
        {
            rows.Add([.. row.Cells]);
        }

        Assert.Null(csv.Fault);
        return [.. rows];
    }

    // A null end of line takes any of the three when reading.
    private static CsvConfiguration Configuration(string separator, string? newLine)
    {
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = separator,
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            Mode = CsvMode.RFC4180,
            BadDataFound = null,
        };
        if (newLine is not null)
        {
            configuration.NewLine = newLine;
        }

        return configuration;
    }

    private static string Written(string[][] rows, char separator)
    {
        var text = new StringWriter();
        using var csv = new CsvWriter(text, Configuration(separator.ToString(), "\n"));
        foreach (var row in rows)
        {
            // A record of one empty cell is written as nothing at all, which no reader can tell from no record.
            csv.WriteField(row[0], shouldQuote: row is [""] || row[0].Contains(separator) || row[0].AsSpan().IndexOfAny("\"\n\r ") >= 0);
            foreach (var cell in row[1..])
            {
                csv.WriteField(cell);
            }

            csv.NextRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static string[][] Theirs(string text)
    {
        using var csv = new CsvParser(new StringReader(text), Configuration(",", null));
        var rows = new List<string[]>();
        while (csv.Read())
        {
            rows.Add(csv.Record!);
        }

        return [.. rows];
    }
}
