using Xunit;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;

namespace Kitwright.Checking.Tests;

/// <summary>Every block of the book is cut and sewn by the checker, or the plan says why there is none.</summary>
public sealed class BookPlansTest
{
    public static TheoryData<string> Blocks => [.. BlockBook.All.Select(block => block.Id)];

    // Whirling patches take a partial seam.
    private static readonly HashSet<string> Unplanned = ["bright-hopes"];

    [Theory]
    [MemberData(nameof(Blocks))]
    public void A_block_is_sewn_as_it_is_drawn(string id)
    {
        var block = BlockBook.Find(id)!;
        var quilt = (NewQuilt.With(block, LengthUnit.Inch) with { Columns = 2, Rows = 2 }).Make().Value!;

        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);

        var curved = block.Patches.Any(p => !p.Arcs.IsEmpty);
        Assert.Equal(curved || Unplanned.Contains(id), planned.Value is null);
        if (planned.Value is { } plan)
        {
            Assert.Empty(PlanChecker.Check(plan).Findings);
        }
    }

    [Theory]
    [InlineData("attic-windows")]
    [InlineData("bow-tie")]
    [InlineData("eight-pointed-star")]
    [InlineData("honeycomb")]
    public void A_part_that_is_set_in_along_another_line_is_refused(string id)
    {
        var quilt = (NewQuilt.With(BlockBook.Find(id)!, LengthUnit.Inch) with { Columns = 1, Rows = 1 }).Make().Value!;
        var plan = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        var recipe = plan.Sewing.Recipes.First(r => r.Verbs.OfType<SewIn>().Any(s => s.Lines.Length > 1));
        var at = recipe.Verbs.IndexOf(recipe.Verbs.OfType<SewIn>().First(s => s.Lines.Length > 1));
        var sewn = (SewIn)recipe.Verbs[at];

        Assert.NotEmpty(Findings(sewn with { Lines = sewn.Lines[..^1] }));
        Assert.NotEmpty(Findings(sewn with { On = sewn.Part, Part = sewn.On }));
        Assert.NotEmpty(Findings(sewn with { Lines = [.. sewn.Lines.Reverse()] }));

        IEnumerable<Findings.Finding> Findings(Verb mutant)
        {
            var other = recipe with { Verbs = recipe.Verbs.SetItem(at, mutant) };
            return PlanChecker.Check(plan with { Sewing = new(plan.Sewing.Recipes.Replace(recipe, other)) }).Findings;
        }
    }
}
