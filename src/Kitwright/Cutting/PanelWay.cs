using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// Cloth that is printed in panels: strips are chosen as from any cloth, and then packed into panels. Of the cutter's plan
/// and two simple ones the one that needs fewest panels is taken.
/// </summary>
/// <remarks>
/// The bound of the strips over the panel, rounded up, bounds the panels; a plan that needs more is not called least.
/// </remarks>
public static class PanelWay
{
    /// <returns>What is higher than a panel is a finding, and the rest is planned.</returns>
    public static Checked<ClothPlan> Cut(ClothProblem problem, Length panel, Func<ClothProblem, Checked<ClothPlan>> cut)
    {
        var tall = problem
            .Demand.Where(d => d.Height > panel)
            .Select(d => Finding.Of("cutting.over-panel", d.Piece.Value, ("label", d.Label), ("height", d.Height), ("panel", panel)))
            .ToImmutableArray();
        problem = problem with { Demand = [.. problem.Demand.Where(d => d.Height <= panel)] };
        if (problem.Demand.IsEmpty)
        {
            return new(null, tall);
        }

        Checked<ClothPlan> best = new(null, []);
        foreach (var way in new Func<ClothProblem, Checked<ClothPlan>>[] { cut, FirstFit.Plan, HandbookWay.Plan })
        {
            var made = way(problem);
            if (made.Value is not { } plan)
            {
                return made with { Findings = [.. tall, .. made.Findings] };
            }

            var packed = Packed(plan, problem.SpareStrips, panel);
            if (best.Value is null || packed.Purchase < best.Value.Purchase)
            {
                best = made with { Value = packed };
            }
        }

        return best with { Findings = [.. tall, .. best.Findings] };
    }

    private static ClothPlan Packed(ClothPlan plan, int spares, Length panel)
    {
        var strips = plan.Strips.SelectMany(strip => Enumerable.Repeat((Strip: (PathId?)strip.Id, strip.Height), strip.Times)).ToList();
        if (spares > 0 && plan.Margin.Sign > 0)
        {
            strips.AddRange(Enumerable.Repeat(((PathId?)null, plan.Margin / spares), spares));
        }

        ImmutableArray<PanelCut> panels =
        [
            .. PanelPacking
                .Of([.. strips.Select(s => s.Height)], panel)
                .Select(bin => bin.Select(i => strips[i].Strip).ToArray())
                .GroupBy(bin => string.Join(' ', bin.Select(strip => strip?.Value ?? "")))
                .Select(same => new PanelCut(
                    same.Count(),
                    [.. same.First().OfType<PathId>().GroupBy(strip => strip).Select(strip => new PanelStrip(strip.Key, strip.Count()))],
                    same.First().Count(strip => strip is null)
                )),
        ];
        return plan with { Panels = panels, Purchase = panel * panels.Sum(p => (long)p.Times) };
    }
}
