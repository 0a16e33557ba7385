using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>Pieces of cloth that somebody has, as a list says.</summary>
public sealed record ClothList(ImmutableArray<StockSheet> Sheets)
{
    /// <summary>More of one kind than anybody has on a shelf.</summary>
    public const int MostOfOneKind = 100_000;

    private static readonly ImmutableArray<string> Required = ["label", "width", "height"];
    private static readonly ImmutableArray<string> Optional = ["count", "cost"];

    /// <summary>
    /// The list of a separated text with the columns label, width and height, and perhaps count (1 where it is not
    /// said; <c>any</c> for as many as one likes) and cost (the area where it is not said). A line that cannot be used
    /// is a finding. Never throws.
    /// </summary>
    public static Checked<ClothList> Read(byte[] bytes, ListMeasure measure)
    {
        var sheets = ImmutableArray.CreateBuilder<StockSheet>();
        var findings = ListText.Read(
            bytes,
            measure,
            Required,
            Optional,
            cells =>
            {
                if (cells.Label() is not { } label)
                {
                    return;
                }

                var (width, height) = (cells.Measure("width", label), cells.Measure("height", label));
                var any = cells.Text("count").Equals("any", StringComparison.OrdinalIgnoreCase);
                var count = any ? 0 : cells.Count(label, absent: 1);
                if (width is null || height is null || count is null)
                {
                    return;
                }

                if (count > MostOfOneKind)
                {
                    cells.Report("cutlist.cloth-count", ("label", label), ("most", MostOfOneKind));
                    return;
                }

                var area = width.Value.InInches * height.Value.InInches;
                if (cells.Text("cost").Length == 0)
                {
                    sheets.Add(new(IdOf(cells.Line), label, width.Value, height.Value, any ? null : count, area));
                }
                else if (RationalText.TryParse(cells.Number("cost").Trim('$', '€', '£', ' '), out var cost) && cost.Sign >= 0 && cost <= Dearest)
                {
                    sheets.Add(new(IdOf(cells.Line), label, width.Value, height.Value, any ? null : count, cost));
                }
                else
                {
                    cells.Report("cutlist.cost", ("label", label), ("text", cells.Text("cost")));
                }
            }
        );
        return new(sheets.Count == 0 ? null : new(sheets.ToImmutable()), findings);
    }

    /// <summary>A list with columns where its first line names them, otherwise lines as a quilter writes them down.</summary>
    /// <param name="usualWidth">Of yards and strips whose width is not said.</param>
    /// <param name="unit">Of sizes without one in such lines.</param>
    public static Checked<ClothList> ReadAny(byte[] bytes, Length usualWidth, LengthUnit unit = LengthUnit.Inch)
    {
        var text = ListText.Of(bytes);
        var first = text.AsSpan().TrimStart();
        first = first[..Math.Max(0, first.IndexOfAny('\r', '\n'))];
        return first.Contains("width", StringComparison.OrdinalIgnoreCase) && first.Contains("height", StringComparison.OrdinalIgnoreCase)
            ? Read(bytes, ListMeasure.Inches)
            : StashText.Read(text, usualWidth, unit);
    }

    private static Rational Dearest => 1_000_000_000;

    private static PathId IdOf(int line) => new PathId("cloth").Child("line", line);
}
