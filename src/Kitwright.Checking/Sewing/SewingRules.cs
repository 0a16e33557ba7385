using System.Collections.Immutable;
using Kitwright.Checking.Exact;
using Kitwright.Checking.Showing;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>Interprets every recipe once, in order, and holds what comes out against what it should be.</summary>
internal static class SewingRules
{
    public static ImmutableArray<TraceLink> Check(QuiltPlan plan, FindingList findings, Effort effort)
    {
        var pieces = plan.Pieces.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
        var blocks = plan.Design.Blocks.ToLookup(b => b.Id, StringComparer.Ordinal);
        var units = new Dictionary<PathId, Unit?>();
        var links = new List<TraceLink>();
        var skipped = 0;
        foreach (var recipe in plan.Sewing.Recipes)
        {
            if (recipe.Verbs.OfType<Use>().Any(u => units.TryGetValue(u.Unit, out var used) && used is null))
            {
                skipped++;
                units.TryAdd(recipe.Id, null);
                continue;
            }

            var table = new Table(recipe.Id, plan.Seam, plan.RulerStep, pieces, units, effort);
            var unit = Make(recipe, table, blocks, findings);
            if (!units.TryAdd(recipe.Id, unit))
            {
                findings.Add("check.plan.id-twice", recipe.Id.Value);
            }

            if (unit is not null)
            {
                links.AddRange(Look(plan, unit, blocks, findings, effort));
            }
        }

        if (!findings.Any)
        {
            HandRules.Check(plan, units, findings, effort);
            PrintRules.Check(plan, units, findings, effort);
        }

        if (skipped > 0)
        {
            findings.Add(Finding.NoteOf("check.sewing.not-checked", "sewing", ("count", skipped)));
        }

        return [.. links.Distinct()];
    }

    private static Unit? Make(Recipe recipe, Table table, ILookup<string, BlockDesign> blocks, FindingList findings)
    {
        var seams = table.Seam * 2;
        if (recipe.Width <= seams || recipe.Height <= seams)
        {
            findings.Add(
                "check.sewing.unit-too-small",
                recipe.Id.Value,
                Say.Size(recipe.Width, recipe.Height),
                Say.AtLeast(Say.Size(seams, seams))
            );
            return null;
        }

        var finding = Interpreter.Run(recipe, table, out var copies) ?? AllAlike(recipe, copies, table);
        findings.Add(finding);
        if (finding is not null)
        {
            return null;
        }

        findings.Add(PictureRule.Check(recipe, copies[0], blocks, table.Seam, table.Effort));
        return new(recipe, copies[0]);
    }

    /// <summary>Copies of one unit may be made of different pieces and joined elsewhere, but look the same.</summary>
    private static Finding? AllAlike(Recipe recipe, Face[][] copies, Table table)
    {
        if (copies.Length == 1)
        {
            return null;
        }

        var finished = Verbs.UnitOutline.Finished(recipe, table.Seam);
        var first = new View(Leaves.Of(copies[0], finished, table.Effort), table.Effort);
        for (var i = 1; i < copies.Length; i++)
        {
            foreach (var leaf in Leaves.Of(copies[i], finished, table.Effort))
            {
                var alike = leaf.Block is null
                    ? first.Covers(leaf.Shape, leaf.Role!)
                    : Leaves.Inside(leaf, table.Effort).All(inner => first.Covers(inner.Shape, inner.Role!));
                if (!alike)
                {
                    return Finding.Of("check.sewing.copies-differ", recipe.Id.Value, ("copy", i + 1));
                }
            }
        }

        return null;
    }

    private static IEnumerable<TraceLink> Look(
        QuiltPlan plan,
        Unit unit,
        ILookup<string, BlockDesign> blocks,
        FindingList findings,
        Effort effort
    )
    {
        var recipe = unit.Recipe;
        if (recipe.Shows is null)
        {
            return [];
        }

        if (recipe.Shows == Recipe.WholeTop)
        {
            TopRule.Check(recipe, plan.Design, unit.Faces, plan.Seam, findings, effort);
            return Tracing.Of(plan.Design.Patches, recipe, unit.Faces, plan.Seam, effort);
        }

        if (blocks[recipe.Shows].FirstOrDefault() is not { } block)
        {
            findings.Add("check.sewing.unknown-block", recipe.Id.Value, ("block", recipe.Shows));
            return [];
        }

        BlockRule.Check(recipe, block, unit.Faces, plan.Seam, findings, effort);
        return Tracing.Of(block.Patches, recipe, unit.Faces, plan.Seam, effort);
    }
}
