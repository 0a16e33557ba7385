using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// The sequential heuristic with value correction: sheet after sheet, each as valuable as can be; then the values of
/// pieces that ended in wasteful sheets rise, and all begins again.
/// </summary>
/// <remarks>
/// G. Belov and G. Scheithauer, "Setup and open-stacks minimization in one-dimensional stock cutting", INFORMS Journal
/// on Computing 19 (2007), for the correction. Floating point only weighs; what fits is decided in whole numbers.
/// </remarks>
internal sealed class ValueCorrection(SheetGrid grid, ImmutableArray<PlatePricing> pricings, WorkMeter meter, int seed)
{
    // Values are about the area of a piece, times this.
    private const double Fine = 1 << 10;

    private readonly Random random = new(seed);

    /// <summary>Values to begin with: the area, larger pieces a little more.</summary>
    public double[] Areas()
    {
        var power = 1 + (0.15 * random.NextDouble());
        var most = (double)grid.Pieces.Max(piece => piece.Area);
        return [.. grid.Pieces.Select(piece => most * Math.Pow(piece.Area / most, power))];
    }

    /// <summary>Values by chance around the area: patterns that no order of sizes would lead to.</summary>
    public double[] ByChance() => [.. grid.Pieces.Select(piece => piece.Area * Math.Pow(4, (2 * random.NextDouble()) - 1))];

    /// <summary>Several rounds from given values; tells of every outcome. The values are left as corrected.</summary>
    /// <param name="loose">Whether sheets and strips are chosen a little by chance, and values weighed so.</param>
    public void Run(
        double[] values,
        IReadOnlyList<int> wanted,
        IReadOnlyList<int> sheetsLeft,
        int rounds,
        bool loose,
        Func<ImmutableArray<CutSheets>, bool> takeAndGoOn
    )
    {
        for (var round = 0; round < rounds && !meter.MustStop; round++)
        {
            var sheets = Build(values, wanted, sheetsLeft, loose);
            if (meter.MustStop || !takeAndGoOn(sheets))
            {
                return;
            }

            Correct(values, sheets);
        }
    }

    private ImmutableArray<CutSheets> Build(double[] values, IReadOnlyList<int> wanted, IReadOnlyList<int> sheetsLeft, bool loose)
    {
        int[] left = [.. wanted];
        int[] sheets = [.. sheetsLeft];
        double Weight() => loose ? Math.Pow(2, random.NextDouble() - 0.5) : 1;
        long[] whole = [.. values.Select(value => (long)Math.Max(1, Math.Min(value * Weight(), 1e12) * Fine))];
        var built = ImmutableArray.CreateBuilder<CutSheets>();
        var atOnce = !loose || random.Next(2) == 0;
        while (left.Any(count => count > 0) && !meter.MustStop && Best(whole, left, sheets, loose, atOnce) is { } column)
        {
            var times = Math.Min(column.MostTimes(left), sheets[column.Sheet]);
            for (var i = 0; i < column.Pieces.Length; i++)
            {
                left[column.Pieces[i]] -= times * column.Copies[i];
            }

            sheets[column.Sheet] -= times;
            built.Add(new(column.Pattern, times));
        }

        return built.ToImmutable();
    }

    /// <summary>The pattern that gives most for its cost.</summary>
    /// <param name="atOnce">Whether patterns that hold all that is left go before others, the cheapest first.</param>
    private SheetColumn? Best(long[] values, int[] left, int[] sheets, bool loose, bool atOnce)
    {
        SheetColumn? best = null;
        (bool All, long Cost, Int128 Worth) bestFigures = default;
        foreach (var pricing in pricings.Where(p => sheets[p.Plate.Sheet] > 0))
        {
            if (pricing.Construct(values, left, loose ? random : null) is not { } pattern)
            {
                continue;
            }

            var column = SheetColumn.Of(grid, grid.IsOpen ? SheetSurplus.Tight(grid, pattern) : pattern);
            if (column.MostTimes(left) == 0)
            {
                column = Cropped(column, left);
            }

            Int128 worth = 0;
            var taken = 0;
            for (var i = 0; i < column.Pieces.Length; i++)
            {
                worth += (Int128)values[column.Pieces[i]] * column.Copies[i];
                taken += column.Copies[i];
            }

            worth = loose ? worth * random.Next(80, 121) / 100 : worth;
            var figures = (All: atOnce && taken == left.Sum(), column.Cost, Worth: worth);
            if (best is null || Better(figures, bestFigures))
            {
                (best, bestFigures) = (column, figures);
            }
        }

        return best;
    }

    /// <summary>Folded strips may yield more than is left: what is over counts for nothing.</summary>
    private static SheetColumn Cropped(SheetColumn column, int[] left) =>
        column with { Copies = [.. column.Pieces.Select((piece, i) => Math.Max(1, Math.Min(column.Copies[i], left[piece])))] };

    private static bool Better((bool All, long Cost, Int128 Worth) x, (bool All, long Cost, Int128 Worth) y) =>
        x.All != y.All ? x.All
        : x.All ? x.Cost < y.Cost
        : x.Worth * y.Cost > y.Worth * x.Cost;

    private void Correct(double[] values, ImmutableArray<CutSheets> sheets)
    {
        var power = 1 + (0.1 * random.NextDouble());
        var most = (double)grid.Pieces.Max(piece => piece.Area);
        foreach (var (pattern, times) in sheets)
        {
            var yields = pattern.Yields(values.Length);
            var used = 0.0;
            for (var i = 0; i < yields.Length; i++)
            {
                used += (double)yields[i] * grid.Pieces[i].Area;
            }

            var sheet = grid.Sheets[pattern.Sheet];
            var area = grid.IsOpen ? (double)sheet.Width * pattern.Height : sheet.Area;
            var scarcity = Math.Min(area / Math.Max(used, 1), 10);
            for (var i = 0; i < yields.Length; i++)
            {
                if (yields[i] > 0)
                {
                    var weight = (double)yields[i] * times / grid.Counts[i] * (0.5 + random.NextDouble());
                    var value = most * Math.Pow(grid.Pieces[i].Area / most, power) * scarcity;
                    values[i] = (values[i] + (weight * value)) / (1 + weight);
                }
            }
        }
    }
}
