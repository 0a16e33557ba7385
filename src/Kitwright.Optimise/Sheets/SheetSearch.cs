using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// Cheap sheets for a grid within a budget of work: column generation for the bound, a dive and value correction for
/// good patterns, and set cover over all patterns seen.
/// </summary>
/// <param name="goodEnough">Whether a bound makes a solution the best that is asked for, but for what is second to it.</param>
internal sealed class SheetSearch(SheetGrid grid, WorkMeter meter, int seed, Func<SheetSolution, long, bool> goodEnough) : IDisposable
{
    private const int MostColumns = 2000;

    /// <summary>Where the time is over a bound is still computed if it takes no longer than a moment.</summary>
    private const long CellsAfterTheEnd = 1 << 27;

    /// <summary>Rounds without a better solution after which the search ends by itself.</summary>
    private const int IdleRounds = 40;

    /// <summary>Rounds that a solution which is good enough is still bettered in second things.</summary>
    private const int FurtherRounds = 2;

    private readonly SheetColumnGenerator generator = new(grid, meter);
    private readonly int[] allSheets = [.. grid.Sheets.Select(sheet => sheet.Count ?? int.MaxValue)];
    private int coveredWith;

    public SheetSolution Best { get; private set; } = SheetSolution.Of(grid, FirstFitSheets.Plan(grid));

    /// <summary>In cost units; no plan that cuts everything costs less.</summary>
    public long Bound { get; private set; } = SheetAreaBound.Of(grid);

    /// <summary>From which the bound follows; empty where it is by area.</summary>
    public ImmutableArray<long> ProofDuals { get; private set; } = [];

    public long Scale => generator.Scale;

    /// <summary>Empty before the linear program is solved.</summary>
    public ImmutableArray<long> Duals { get; private set; } = [];

    /// <summary>Nothing better is asked for.</summary>
    public bool Done { get; private set; }

    /// <summary>Whether the bound shows that not everything can be cut: it exceeds the cost of all sheets there are.</summary>
    public bool EnoughExcluded => grid.Sheets.All(s => s.Count is not null) && Bound > grid.Sheets.Sum(s => s.Cost * s.Count!.Value);

    public void Run()
    {
        foreach (var (pattern, _) in Best.Sheets)
        {
            generator.Add(SheetColumn.Of(grid, pattern));
        }

        if (AnyHeight && new SliceRelaxation(grid, meter).Solve(Scale) is var (bound, duals))
        {
            Raise(bound, duals);
        }

        var correction = new ValueCorrection(grid, generator.Pricings, meter, seed);
        correction.Run(correction.Areas(), grid.Counts, allSheets, 1, loose: false, Take);
        if (meter.MustStop || !generator.Solve(grid.Counts, allSheets, mostRounds: 10_000))
        {
            return;
        }

        Duals = generator.Duals;
        if (!AnyHeight && (!meter.MustStop || generator.Pricings.Sum(p => p.Cells) <= CellsAfterTheEnd))
        {
            Raise(generator.Bound(), Duals);
        }

        Dive(correction);
        // Duals as values favor what is hard to cut well; areas, what is large.
        var (worth, idle) = (Best.Worth, 0);
        for (var round = 0; !Done && !meter.MustStop && idle < IdleRounds; round++)
        {
            if (round >= FurtherRounds && Best.IsWhole && goodEnough(Best, Bound))
            {
                Done = true;
                return;
            }

            var values = (round % 3) switch
            {
                0 => ByDuals(),
                1 => correction.Areas(),
                _ => correction.ByChance(),
            };
            correction.Run(values, grid.Counts, allSheets, 10 + (5 * round), loose: round % 2 == 1, Take);
            Cover(mostNodes: 500L * (round + 1));
            idle = Best.Worth < worth ? 0 : idle + 1;
            worth = Best.Worth;
        }
    }

    /// <summary>
    /// The generator's strips are no higher than the highest piece; stacked side by side they may be higher with a gain, so
    /// that its bound is none.
    /// </summary>
    private bool AnyHeight => grid is { IsOpen: true, Terms.Stages: 3 };

    private void Raise(long bound, ImmutableArray<long> duals)
    {
        if (bound > Bound)
        {
            (Bound, ProofDuals) = (bound, duals);
        }
    }

    public void Dispose() => generator.Dispose();

    private void Dive(ValueCorrection correction)
    {
        if (!Look())
        {
            return;
        }

        var dive = new SheetDive(grid, generator, meter);
        var outcome = dive.Run(
            (cut, left, sheets) =>
            {
                using (meter.Share(0.1))
                {
                    correction.Run(ByDuals(), [.. left], [.. sheets], 20, loose: false, rest => Take([.. cut, .. rest]));
                }
            }
        );
        if (outcome is { } sheets)
        {
            Take(sheets);
        }

        Cover(mostNodes: 300);
    }

    private double[] ByDuals() =>
        [.. Duals.Select((dual, i) => Math.Max((double)dual / Scale, 1e-3) / grid.Sheets.Max(s => s.Cost) * grid.Sheets.Max(s => s.Area))];

    /// <summary>False where nothing better is asked for.</summary>
    private bool Take(ImmutableArray<CutSheets> sheets)
    {
        foreach (var (pattern, _) in sheets)
        {
            generator.Add(SheetColumn.Of(grid, pattern));
        }

        var solution = SheetSolution.Of(grid, sheets);
        if (solution.Worth < Best.Worth)
        {
            Best = solution;
        }

        return Look();
    }

    private bool Look()
    {
        Done = Best.IsWhole && Bound >= Best.Cost;
        return !Done;
    }

    private void Cover(long mostNodes)
    {
        if (Done || meter.MustStop || generator.Columns.Count == coveredWith)
        {
            return;
        }

        coveredWith = generator.Columns.Count;
        // The newest columns are those of whole solutions.
        var columns = generator.Columns.Skip(Math.Max(0, generator.Columns.Count - MostColumns)).ToList();
        if (SheetSetCover.Solve(grid, columns, Best, Bound, mostNodes, meter) is { } better)
        {
            Best = better;
            Look();
        }
    }
}
