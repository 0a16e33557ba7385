using System.Diagnostics;
using System.Globalization;
using Kitwright.Checking;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;

namespace Kitwright.Bench.Cutting;

/// <summary>A case that was cut, checked and measured.</summary>
/// <param name="Seconds">Processor time of the whole process, the solver's native code included.</param>
/// <param name="Megabytes">Managed memory allocated, in 10^6 bytes.</param>
/// <param name="Handbook">The same cloth cut the handbook's way.</param>
internal sealed record CutRow(CutCase Case, ClothPlan Plan, double Seconds, double Megabytes, ClothPlan Handbook)
{
    public const string Header =
        "set,instance,types,pieces,bound,length,best_known,peer,status,stopped_by,purchase_least,settings,cuts,cpu_seconds,allocated_mb,purchase,handbook_length,handbook_purchase,handbook_settings,handbook_cuts";

    public Length Height => Plan.Cut - Plan.Terms.Straightening;

    public bool Proved => Plan.Proof.Status != ProofStatus.Within;

    /// <summary>How far the height may be above the least, as a share of the bound.</summary>
    public double Gap => Number((Height - Plan.Proof.Bound) / Plan.Proof.Bound);

    public static CutRow Measure(CutCase @case, WorkBudget budget)
    {
        var process = Process.GetCurrentProcess();
        var allocated = GC.GetTotalAllocatedBytes(precise: true);
        var time = process.TotalProcessorTime;
        var plan = ClothCutter.Cut(@case.Problem, budget).Value ?? throw new InvalidOperationException($"{@case.Name}: no plan");
        process.Refresh();
        var seconds = (process.TotalProcessorTime - time).TotalSeconds;
        var megabytes = (GC.GetTotalAllocatedBytes(precise: true) - allocated) / 1e6;
        // Whatever the engine says of itself is cut, counted and bounded again by the checker.
        var faults = ClothChecker.Check(plan);
        if (!faults.IsEmpty)
        {
            throw new InvalidOperationException($"{@case.Name}: the checker refuses the plan: {faults[0].Rule} at {faults[0].Place}");
        }

        return new(@case, plan, seconds, megabytes, HandbookWay.Plan(@case.Problem).Value!);
    }

    public override string ToString() =>
        string.Join(
            ',',
            Case.Set,
            Case.Name,
            Text(Plan.Demand.Length),
            Text(Plan.Demand.Sum(d => (long)d.Count)),
            Text(Plan.Proof.Bound),
            Text(Height),
            Text(Case.BestKnown),
            Text(Case.Peer),
            Plan.Proof.Status,
            Plan.Proof.StoppedBy,
            Plan.PurchaseIsLeast ? "1" : "0",
            Text((long)Plan.Figures.StripWidths),
            Text((long)Plan.Figures.Strips + Plan.Figures.SubCuts + Plan.Figures.Trims),
            Seconds.ToString("0.000", CultureInfo.InvariantCulture),
            Megabytes.ToString("0.0", CultureInfo.InvariantCulture),
            Text(Plan.Purchase),
            Text(Handbook.Cut - Handbook.Terms.Straightening),
            Text(Handbook.Purchase),
            Text((long)Handbook.Figures.StripWidths),
            Text((long)Handbook.Figures.Strips + Handbook.Figures.SubCuts + Handbook.Figures.Trims)
        );

    public static double Number(Rational ratio) => (double)ratio.Numerator / (double)ratio.Denominator;

    private string Text(Length? length) =>
        length is { } known ? Number(known / Case.Unit).ToString("0.####", CultureInfo.InvariantCulture) : "";

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
