using System.Collections.Immutable;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// Each technique in each quilt of the book that has such a unit: planned, and sewn by the checker. The demo quilts are
/// all tried; of the book's blocks every third, beginning with another one for each technique.
/// </summary>
public sealed class TechniqueMatrixTest
{
    private const int Step = 3;

    private static readonly Lazy<List<(Quilt Quilt, ImmutableSortedDictionary<string, int> Kinds)>> Book = new(() =>
        [.. BlockBook.All.Select(b => (NewQuilt.With(b, LengthUnit.Inch) with { Columns = 1, Rows = 1 }).Make().Value!).SelectMany(WithUnits)]
    );

    private static readonly Lazy<List<(Quilt Quilt, ImmutableSortedDictionary<string, int> Kinds)>> Demo = new(() =>
        [.. DemoQuilts.All().SelectMany(WithUnits)]
    );

    public static TheoryData<string, string, int> Ways()
    {
        var ways = new TheoryData<string, string, int>();
        foreach (var (i, (kind, technique)) in TechniqueBook.Kinds.SelectMany(k => k.Techniques.Select(t => (k, t))).Index())
        {
            ways.Add(kind.Name, technique.Name, i % Step);
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Each_technique_is_sewn_in_each_quilt_that_has_such_a_unit(string kind, string technique, int from)
    {
        var quilts = Having(Demo.Value).Concat(Having(Book.Value).Where((_, i) => i % Step == from)).ToArray();

        Assert.NotEmpty(quilts);
        Assert.All(
            quilts,
            q =>
            {
                var planned = QuiltPlanner.Plan(q.Quilt with { Techniques = q.Quilt.Techniques.SetItem(kind, technique) }, null, [], PlanOptions.Usual, FirstFit.Plan);
                Assert.Empty(planned.Findings);
                Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
            }
        );

        IEnumerable<(Quilt Quilt, ImmutableSortedDictionary<string, int> Kinds)> Having(IEnumerable<(Quilt Quilt, ImmutableSortedDictionary<string, int> Kinds)> all) => all.Where(q => q.Kinds.ContainsKey(kind));
    }

    private static IEnumerable<(Quilt Quilt, ImmutableSortedDictionary<string, int> Kinds)> WithUnits(Quilt quilt) =>
        TechniqueComparison.KindsIn(quilt) is { IsEmpty: false } kinds ? [(quilt, kinds)] : [];
}
