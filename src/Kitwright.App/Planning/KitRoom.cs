using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Optimise.Allocation;
using Kitwright.Plans;
using Kitwright.Publishing;
using Kitwright.Quilts;

namespace Kitwright.App.Planning;

/// <summary>From a quilt's colorways to kits from the shelf: each colorway is planned and checked, then the bolts are dealt.</summary>
public static class KitRoom
{
    /// <param name="wanted">Kits by colorway; a colorway that is absent is not asked for.</param>
    /// <param name="withBacking">Kits hold top and binding; backing is sold beside them unless this says otherwise.</param>
    public static Checked<KitPlan> Plan(
        Quilt quilt,
        Shelf shelf,
        ImmutableSortedDictionary<string, int> wanted,
        bool withBacking,
        Func<Colorway, PlannedQuilt> plan,
        KitTerms terms,
        BoltBudget budget,
        CancellationToken cancel
    )
    {
        if (quilt.Licensed is { Kits: false } license)
        {
            return Checked<KitPlan>.Failed(Finding.Of("license.kits", "/licensed/kits", ("owner", license.Owner)));
        }

        var findings = ImmutableArray.CreateBuilder<Finding>();
        var lines = ImmutableArray.CreateBuilder<KitLine>();
        foreach (var colorway in quilt.Colorways.Where(c => wanted.ContainsKey(c.Name)))
        {
            if (LicensedNeeds.Of(quilt, colorway) is { } typed)
            {
                lines.Add(new(colorway.Name, null, InTheBag(typed, withBacking), wanted[colorway.Name]));
                continue;
            }

            var planned = plan(colorway);
            findings.AddRange(planned.Findings);
            if (planned.Plan is { } found)
            {
                lines.Add(new(colorway.Name, found.Mark, InTheBag(found.Needs, withBacking), wanted[colorway.Name]));
            }
        }

        if (findings.Any(f => f.Weight == Weight.Fault))
        {
            return new(null, findings.ToImmutable());
        }

        var kits = KitPlanning.Plan(shelf, new(lines.ToImmutable()), terms, CpSatBolts.Solver(budget), cancel);
        return new(kits.Value, [.. findings, .. kits.Findings]);
    }

    private static Needs InTheBag(Needs needs, bool withBacking) =>
        withBacking ? needs : needs with { Lengths = [.. needs.Lengths.Where(n => n.Kind != NeedKind.Backing)] };
}
