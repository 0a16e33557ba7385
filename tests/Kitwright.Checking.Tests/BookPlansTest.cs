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

    [Theory]
    [MemberData(nameof(Blocks))]
    public void A_block_is_sewn_as_it_is_drawn(string id)
    {
        var block = BlockBook.Find(id)!;
        var quilt = (NewQuilt.With(block, LengthUnit.Inch) with { Columns = 2, Rows = 2 }).Make().Value!;

        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);

        var curved = block.Patches.Any(p => !p.Arcs.IsEmpty);
        Assert.Equal(curved, planned.Value is null);
        if (planned.Value is { } plan)
        {
            Assert.Empty(PlanChecker.Check(plan).Findings);
        }
    }

    [Fact]
    public void A_partial_seam_is_sewn_in_the_one_order_that_closes_it()
    {
        var quilt = (NewQuilt.With(BlockBook.Find("bright-hopes")!, LengthUnit.Inch) with { Columns = 1, Rows = 1 }).Make().Value!;
        var plan = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        var recipe = Assert.Single(plan.Sewing.Recipes, r => r.Verbs.Any(v => v is SewPart));
        var verbs = recipe.Verbs;
        int first = verbs.ToList().FindIndex(v => v is SewPart),
            close = verbs.ToList().FindIndex(v => v is CloseSeam);
        var sewn = (SewPart)verbs[first];
        Assert.Empty(Findings(verbs));

        // Never closed; closed before the others are there; the last part caught in the loose edge; sewn the whole way at once.
        Assert.NotEmpty(Findings(verbs.RemoveAt(close)));
        Assert.NotEmpty(Findings(verbs.RemoveAt(close).Insert(first + 1, verbs[close])));
        Assert.NotEmpty(Findings(verbs.SetItem(first, sewn with { Stop = sewn.Line.To })));
        Assert.NotEmpty(Findings(verbs.SetItem(first, sewn with { Line = sewn.Line.Reversed })));
        Assert.NotEmpty(Findings(verbs.SetItem(first, sewn with { Line = new(sewn.Line.From, sewn.Stop + (sewn.Stop - sewn.Line.From)) })));
        Assert.NotEmpty(Findings(verbs.SetItem(first, new SewIn(sewn.On, sewn.Part, [sewn.Line], PressToward.Top)).RemoveAt(close)));
        // Stopped so late that the last seam would run into the stitches.
        Assert.NotEmpty(Findings(verbs.SetItem(first, sewn with { Stop = sewn.Line.From + ((sewn.Line.To - sewn.Line.From) * new Geometry.Surd(new Rational(9, 10))) })));

        IEnumerable<Findings.Finding> Findings(System.Collections.Immutable.ImmutableArray<Verb> mutant) =>
            PlanChecker.Check(plan with { Sewing = new(plan.Sewing.Recipes.Replace(recipe, recipe with { Verbs = mutant })) }).Findings;
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
