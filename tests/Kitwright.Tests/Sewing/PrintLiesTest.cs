using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Sewing;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Sewing;

public sealed class PrintLiesTest
{
    [Theory]
    [InlineData(PrintDirection.OneWay, "In the drawing of this step the up of the print of Fabrics A and B points up.")]
    [InlineData(PrintDirection.TwoWay, "In the drawing of this step the print of Fabrics A and B runs up and down.")]
    public void A_step_says_which_way_its_prints_run(PrintDirection direction, string expected)
    {
        var lines = Lines(direction);
        Assert.Contains(expected, lines);
    }

    [Fact]
    public void Cloth_that_may_lie_any_way_round_is_not_spoken_of() =>
        Assert.DoesNotContain(Lines(PrintDirection.Any), line => line.Contains("of the print", StringComparison.Ordinal));

    private static string[] Lines(PrintDirection direction)
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", "ostrel-bay-stars.json")).Value!;
        var colorway = quilt.Colorways[0];
        ImmutableArray<Fabric> shelf =
        [
            .. colorway.Fabrics.Values.Distinct().Select(number => new Fabric(number, number, Length.Inches(44), 1000, "#445566", new(PrintKind.LargeFloral, "#ffffff", 1)) { Direction = direction }),
        ];
        var plan = QuiltPlanner.Plan(quilt, colorway, shelf, PlanOptions.Usual, FirstFit.Plan).Value!;
        return [.. Directions.Of(plan).SelectMany(step => step.Lines).Select(line => Catalog.English.Say(line))];
    }
}
