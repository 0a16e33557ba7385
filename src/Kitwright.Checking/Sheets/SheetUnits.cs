using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Checking.Cloths;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;

namespace Kitwright.Checking.Sheets;

/// <summary>A plan's problem in whole units of its proof.</summary>
internal sealed class SheetUnits
{
    private const long LongestSide = 1 << 22;

    private readonly SheetPlan plan;
    private readonly long[] widths;
    private readonly long[] heights;

    private SheetUnits(SheetPlan plan, long[] widths, long[] heights, BigInteger[] costs)
    {
        this.plan = plan;
        this.widths = widths;
        this.heights = heights;
        Costs = [.. costs];
        Counts = [.. plan.Problem.Sheets.Select(sheet => sheet.Count)];
    }

    public bool IsOpen => plan.Problem.Sheets is [{ Height: null }];

    /// <summary>Of each sheet, in cost units; of a cloth of open length, of one unit of its length.</summary>
    public ImmutableArray<BigInteger> Costs { get; }

    public ImmutableArray<int?> Counts { get; }

    public BigInteger WorthOfDemand =>
        plan.Problem.Demand.Zip(plan.Proof.Duals, (demand, dual) => (BigInteger)demand.Count * dual).Aggregate(BigInteger.Zero, BigInteger.Add);

    /// <summary>Null where the proof's units do not measure the problem.</summary>
    public static SheetUnits? Of(SheetPlan plan)
    {
        var (problem, proof) = (plan.Problem, plan.Proof);
        // Pieces that no engine takes have no dual, and need not be whole.
        var measured = problem.Demand.Where((d, i) => d.Count > 0 && (proof.Duals.IsEmpty || proof.Duals[Math.Min(i, proof.Duals.Length - 1)] > 0));
        if (
            proof.Unit.Sign <= 0
            || proof.CostUnit.Sign <= 0
            || proof.Scale <= 0
            || (!proof.Duals.IsEmpty && (proof.Duals.Length != problem.Demand.Length || proof.Duals.Any(dual => dual < 0)))
            || measured.Any(d => !(d.Width / proof.Unit).IsInteger || !(d.Height / proof.Unit).IsInteger)
        )
        {
            return null;
        }

        BigInteger Whole(Length length) => BigInteger.Max(0, (length / proof.Unit).Floor());
        var widths = problem.Sheets.Select(sheet => Whole(sheet.Width - problem.Terms.TrimAcross)).ToArray();
        var heights = problem.Sheets.Select(sheet => sheet.Height is { } h ? Whole(h - problem.Terms.TrimAlong) : 0).ToArray();
        if (widths.Concat(heights).Any(side => side > LongestSide))
        {
            return null;
        }

        var costs = new BigInteger[widths.Length];
        var counted = problem.Goal == SheetGoal.FewestSheets && problem.Sheets is not [{ Height: null }];
        // Where sheets are counted, their cost is an area in square units.
        if (counted && proof.CostUnit != Rational.One)
        {
            return null;
        }

        var all = BigInteger.Zero;
        for (var s = 0; s < costs.Length; s++)
        {
            all += widths[s] * heights[s] * Math.Min(problem.Sheets[s].Count ?? 1000, 1000);
        }

        for (var s = 0; s < costs.Length; s++)
        {
            var cost = problem.Sheets[s].Cost * (problem.Sheets[s].Height is null ? proof.Unit.InInches : Rational.One) / proof.CostUnit;
            if (!counted && !cost.IsInteger)
            {
                return null;
            }

            costs[s] = counted ? all + (widths[s] * heights[s]) : cost.Numerator;
        }

        return new(plan, [.. widths.Select(w => (long)w)], [.. heights.Select(h => (long)h)], costs);
    }

    /// <summary>
    /// In cost units: what the area of the demand costs at least, the cheapest area first; more than all sheets cost where
    /// they have too little.
    /// </summary>
    public BigInteger LeastByArea(Length unit)
    {
        var area = plan.Problem.Demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width / unit * (d.Height / unit) * (Rational)d.Count));
        if (IsOpen)
        {
            return Costs[0] * (area / new Rational(widths[0], 1)).Ceiling();
        }

        var cost = Rational.Zero;
        var areas = Costs.Select((c, s) => (Cost: new Rational(c, 1), Area: new Rational((BigInteger)widths[s] * heights[s], 1), Count: Counts[s]));
        foreach (var sheet in areas.Where(s => s.Area.Sign > 0).OrderBy(s => s.Cost / s.Area))
        {
            var sheets = area / sheet.Area;
            sheets = sheet.Count is { } count ? Rational.Min(sheets, (Rational)count) : sheets;
            cost += sheets * sheet.Cost;
            area -= sheets * sheet.Area;
        }

        return cost.Ceiling() + (area.Sign > 0 ? 1 : 0);
    }

    /// <summary>The least cost, not below a bound, of a length that is a sum of heights in which pieces may lie.</summary>
    public BigInteger ReachedBy(BigInteger least)
    {
        var unit = plan.Proof.Unit;
        var across = widths[0] / plan.Problem.Terms.Folds.Min();
        var heightsOfWays = plan.Problem.Demand.Where(d => d.Count > 0).SelectMany(d => d.MayTurn ? [(d.Width, d.Height), (d.Height, d.Width)] : new[] { (d.Width, d.Height) });
        var fitting = heightsOfWays.Where(way => way.Item1 <= unit * (Rational)across).Select(way => way.Item2 / unit).Distinct().Order().ToList();
        if (fitting.Any(height => !height.IsInteger))
        {
            return least;
        }

        var length = BigInteger.DivRem(least + Costs[0] - 1, Costs[0]).Quotient;
        return NextSum.Of([.. fitting.Select(height => (long)height.Numerator)], length) * Costs[0];
    }

    /// <summary>
    /// For each sheet what it can be worth, and at which height: a sheet as a whole counts as 1 high, a cloth of open
    /// length has an entry for every strip or, in three stages, for slices one unit high.
    /// </summary>
    public ImmutableArray<IReadOnlyList<(BigInteger Value, BigInteger Height)>> Worth()
    {
        var worth = ImmutableArray.CreateBuilder<IReadOnlyList<(BigInteger, BigInteger)>>();
        for (var s = 0; s < widths.Length; s++)
        {
            var found = new List<(BigInteger, BigInteger)>();
            var first = plan.Problem.Terms.First;
            if (IsOpen)
            {
                foreach (var layers in plan.Problem.Terms.Folds)
                {
                    var table = new StripWorth(plan.Problem.Terms, widths[s] / layers, Ways(s, along: false, widths[s], long.MaxValue, layers));
                    var strips = plan.Problem.Terms.Stages == 3 ? [(1, table.OfSlices())] : table.All();
                    found.AddRange(strips.Select(strip => ((BigInteger)strip.Value * layers, (BigInteger)strip.Height)));
                }
            }
            else
            {
                foreach (var along in new[] { false, true }.Where(along => first == FirstCut.Either || (first == FirstCut.Along) == along))
                {
                    var (across, up) = along ? (heights[s], widths[s]) : (widths[s], heights[s]);
                    var strips = new StripWorth(plan.Problem.Terms, across, Ways(s, along, across, up, 1), up);
                    found.Add((Math.Min(StripWorth.StackedUp(strips.All(), up), strips.AllPieces(up)), 1));
                }
            }

            worth.Add(found);
        }

        return worth.ToImmutable();
    }

    private List<LaidPiece> Ways(int s, bool along, long across, long up, int layers)
    {
        var ways = new List<LaidPiece>();
        for (var i = 0; i < plan.Problem.Demand.Length; i++)
        {
            var demand = plan.Problem.Demand[i];
            if (demand.Count == 0 || plan.Proof.Duals[i] == 0 || (!demand.Sheets.IsEmpty && !demand.Sheets.Contains(plan.Problem.Sheets[s].Id)))
            {
                continue;
            }

            var (w, h) = ((long)(demand.Width / plan.Proof.Unit).Numerator, (long)(demand.Height / plan.Proof.Unit).Numerator);
            var count = (demand.Count + layers - 1) / layers;
            ways.Add(along ? new(i, h, w, count, plan.Proof.Duals[i]) : new(i, w, h, count, plan.Proof.Duals[i]));
            if (demand.MayTurn && w != h)
            {
                ways.Add(along ? new(i, w, h, count, plan.Proof.Duals[i]) : new(i, h, w, count, plan.Proof.Duals[i]));
            }
        }

        return [.. ways.Where(way => way.Along <= across / layers && way.Across <= up)];
    }
}

/// <summary>A piece laid one way, in units, with what it is worth.</summary>
internal readonly record struct LaidPiece(int Piece, long Along, long Across, int Count, long Dual);
