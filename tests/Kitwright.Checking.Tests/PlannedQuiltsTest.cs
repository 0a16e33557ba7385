using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Xunit;
using Kitwright.Quilts;

namespace Kitwright.Checking.Tests;

/// <summary>The demo quilts in other sizes: whatever is planned comes out when the checker cuts and sews it.</summary>
public sealed class PlannedQuiltsTest
{
    public static TheoryData<string, int, int, string> Sizes()
    {
        var sizes = new TheoryData<string, int, int, string>();
        foreach (var columns in Enumerable.Range(2, 7))
        {
            sizes.Add("ostrel-bay-stars", columns, 4, "2");
        }

        // Each left a last strip shorter than it is wide, which was once laid sideways.
        sizes.Add("ostrel-bay-stars", 4, 6, "2");
        sizes.Add("tidemark-nine-patch", 6, 7, "2");
        foreach (var border in new[] { "1", "2 1/4", "3 1/8", "6", "7 1/2" })
        {
            sizes.Add("forty-bags-friendship", 0, 0, border);
            sizes.Add("ostrel-bay-stars", 5, 6, border);
            sizes.Add("lantern-steps", 6, 6, border);
        }

        return sizes;
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_size_that_is_planned_comes_out(string name, int columns, int rows, string border)
    {
        var quilt = DemoQuilts.Named(name);
        Assert.True(LengthText.TryParse(border, out var width));
        quilt = quilt with
        {
            Setting = columns == 0 ? quilt.Setting : quilt.Setting with { Columns = columns, Rows = rows },
            Borders = quilt.Borders.SetItem(0, quilt.Borders[0] with { Width = width }),
        };

        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);

        Assert.Empty(planned.Findings);
        Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
    }
}
