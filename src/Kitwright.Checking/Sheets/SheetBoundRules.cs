using System.Numerics;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sheets;

/// <summary>What is said to be the least cost, or number of sheets, recomputed from the whole numbers that come with it.</summary>
internal static class SheetBoundRules
{
    public static void Check(SheetPlan plan, FindingList findings)
    {
        var proof = plan.Proof;
        if (SheetUnits.Of(plan) is not { } units)
        {
            findings.Add("check.sheet.bound-figures", "proof");
            return;
        }

        var least = proof.Duals.IsEmpty ? units.LeastByArea(proof.Unit) : Least(units, proof.Scale);
        least = units.IsOpen ? units.ReachedBy(least) : least;
        var counted = plan.Problem.Goal == SheetGoal.FewestSheets && !units.IsOpen;
        var bound = counted ? new Rational(CeilingQuotient(least, units.Costs.Max()), 1) : proof.CostUnit * new Rational(least, 1);
        var reached = counted ? plan.Cuts.Sum(cut => (long)cut.Times) : SheetFigureRules.Cost(plan);
        var whole = plan.Short.IsEmpty;
        var all = plan.Problem.Sheets.Zip(units.Costs, (sheet, cost) => cost * (sheet.Count ?? 0)).Aggregate(BigInteger.Zero, BigInteger.Add);
        var excluded = !whole && plan.Problem.Sheets.All(sheet => sheet.Count is not null) && least > all;
        var status = whole && bound >= reached ? ProofStatus.Proved : ProofStatus.Within;
        if (proof.Bound != (whole ? Rational.Min(bound, reached) : null) || proof.EnoughExcluded != excluded || proof.Status != status)
        {
            findings.Add("check.sheet.bound", "proof");
        }
    }

    /// <summary>Farley's bound with rows for the counts, in cost units; the conventions are those of the record of the proof.</summary>
    private static BigInteger Least(SheetUnits units, long scale)
    {
        var worth = units.Worth();
        var (value, cost) = (BigInteger.One, BigInteger.One);
        for (var s = 0; s < worth.Length; s++)
        {
            foreach (var (most, height) in worth[s])
            {
                if (units.Counts[s] is null && most * cost > value * units.Costs[s] * scale * height)
                {
                    (value, cost) = (most, units.Costs[s] * scale * height);
                }
            }
        }

        var sum = units.WorthOfDemand * cost;
        for (var s = 0; s < worth.Length; s++)
        {
            if (units.Counts[s] is { } count && worth[s].Count > 0)
            {
                sum -= count * BigInteger.Max(0, (worth[s].Max(w => w.Value) * cost) - (units.Costs[s] * scale * value));
            }
        }

        return sum.Sign <= 0 ? 0 : CeilingQuotient(sum, value * scale);
    }

    private static BigInteger CeilingQuotient(BigInteger dividend, BigInteger divisor) =>
        divisor.IsZero ? 0 : BigInteger.DivRem(dividend + divisor - 1, divisor).Quotient;
}
