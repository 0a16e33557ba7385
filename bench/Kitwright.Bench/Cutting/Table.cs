using System.Globalization;
using Kitwright.Measure;

namespace Kitwright.Bench.Cutting;

/// <summary>A comma-separated file with a header line and no quotes.</summary>
internal static class Table
{
    public static IEnumerable<Row> Read(string path)
    {
        using var reader = new StreamReader(path);
        var names = reader.ReadLine()!.Trim().Split(',');
        while (reader.ReadLine() is { } line)
        {
            if (line.Trim().Length > 0)
            {
                yield return new(names.Zip(line.Trim().Split(',')).ToDictionary(cell => cell.First, cell => cell.Second));
            }
        }
    }

    public sealed class Row(Dictionary<string, string> cells)
    {
        public string this[string name] => cells[name];

        public bool Has(string name) => cells.ContainsKey(name);

        public int Whole(string name) => int.Parse(cells[name], CultureInfo.InvariantCulture);

        public Rational Decimal(string name)
        {
            var thousandths = decimal.Parse(cells[name], CultureInfo.InvariantCulture) * 1000;
            return new((long)thousandths, 1000);
        }
    }
}
