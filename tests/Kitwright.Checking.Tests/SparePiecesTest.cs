using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Spare pieces of a role: cut and delivered, not sewn.</summary>
public sealed class SparePiecesTest
{
    [Theory]
    [InlineData("lantern-steps")]
    [InlineData("ostrel-bay-stars")]
    [InlineData("forty-bags-friendship")]
    public void So_many_more_of_each_size_of_a_role_are_cut_and_none_of_others(string name)
    {
        var quilt = DemoQuilts.Named(name);
        var binding = Planned(quilt).Binding.Piece;
        foreach (var role in quilt.Roles.Where(role => role.Id != quilt.Backing.Role))
        {
            var plan = Planned(quilt with { Roles = quilt.Roles.Replace(role, role with { Spare = 3 }) });

            Assert.Empty(PlanChecker.Check(plan).Findings);
            Assert.All(plan.Pieces, piece => Assert.Equal(piece.Role == role.Id && piece.Id != binding ? 3 : 0, piece.Spare));
            Assert.All(plan.Cloths, cloth => Assert.All(cloth.Demand, d => Assert.Equal(plan.Pieces.Single(p => p.Id == d.Piece).ToCut, d.Count)));
            Assert.NotEqual(Planned(quilt).Mark, plan.Mark);
        }
    }

    /// <summary>A spare piece that the cut list promises is asked of the cloth.</summary>
    [Fact]
    public void A_promised_spare_that_is_not_cut_is_refused()
    {
        var quilt = DemoQuilts.Named("lantern-steps");
        var plan = Planned(quilt with { Roles = [.. quilt.Roles.Select(role => role with { Spare = 1 })] });
        var piece = plan.Pieces.First(p => p.Spare > 0);
        var more = plan with { Pieces = plan.Pieces.Replace(piece, piece with { Spare = 2 }) };
        Assert.Contains("check.cloth.demand-count", PlanChecker.Check(more).Findings.Select(f => f.Rule));
    }

    [Fact]
    public void The_quilt_file_keeps_them()
    {
        var quilt = DemoQuilts.Named("lantern-steps");
        var spare = quilt with { Roles = quilt.Roles.SetItem(0, quilt.Roles[0] with { Spare = 4 }) };
        Assert.Equal(4, QuiltFile.Read(QuiltFile.Write(spare)).Value!.Roles[0].Spare);
        Assert.DoesNotContain("\"spare\"", QuiltFile.Write(quilt), StringComparison.Ordinal);
        Assert.NotEmpty(QuiltFile.Read(QuiltFile.Write(spare).Replace("\"spare\": 4", "\"spare\": 100", StringComparison.Ordinal)).Findings);
    }

    private static QuiltPlan Planned(Quilt quilt) => QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
}
