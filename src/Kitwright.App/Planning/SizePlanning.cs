using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Sizes;
using Kitwright.WorkTimes;

namespace Kitwright.App.Planning;

/// <summary>The best ways to a size, each with its cloth: planned and checked while one waits.</summary>
public static class SizePlanning
{
    /// <param name="plan">The checked plan of a quilt; it is asked from several threads at once.</param>
    public static Checked<PlannedSizes> Of(Quilt quilt, SizeTarget target, Func<Quilt, QuiltPlan?> plan)
    {
        var found = SizeSearch.Of(quilt, target);
        return found.Value is not { } proposal
            ? new(null, found.Findings)
            : new(new([.. proposal.Ways.AsParallel().AsOrdered().Select(way => Plan(quilt, way, plan))]), found.Findings);
    }

    private static PlannedSize Plan(Quilt quilt, SizeWay way, Func<Quilt, QuiltPlan?> plan)
    {
        var resized = Resizing.Of(quilt, way.Choice);
        var planned = plan(resized);
        return new(
            way,
            resized,
            planned?.Needs.Lengths.Aggregate(Length.Zero, (sum, need) => sum + need.Length),
            planned is null ? null : WorkSheet.Of(planned, StandardTimes.Of(Practice.Experienced), Allowances.Usual).All
        );
    }
}

public sealed record PlannedSizes(ImmutableArray<PlannedSize> Ways);

/// <summary>One way to a size.</summary>
/// <param name="Cloth">All lengths together, backing included; null where the quilt cannot be planned.</param>
/// <param name="Seconds">Cutting and sewing at an experienced pace; null likewise.</param>
public sealed record PlannedSize(SizeWay Way, Quilt Quilt, Length? Cloth, double? Seconds);
