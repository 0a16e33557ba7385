using Kitwright.Quilts;
using Kitwright.Settings;
using Kitwright.Tests.Quilts;
using Xunit;

namespace Kitwright.Tests.Settings;

public sealed class BorderChangesTest
{
    private static Quilt Quilt(string file) => QuiltFile.Read(Repository.Read("examples", "quilts", file)).Value!;

    [Theory]
    [MemberData(nameof(DemoQuiltTest.Files), MemberType = typeof(DemoQuiltTest))]
    public void A_border_is_added_with_any_corners_and_left_out_again(string file)
    {
        var quilt = Quilt(file);
        var added = BorderChanges.Added(quilt)!;
        foreach (var style in Enum.GetValues<BorderStyle>())
        {
            var changed = BorderChanges.Cornered(added, style)!;
            Assert.DoesNotContain(QuiltRules.Check(changed), f => f.Weight == Kitwright.Findings.Weight.Fault);
            Assert.Equal(Layout.Of(quilt).Width + (changed.Borders[^1].Width * 2), Layout.Of(changed).Width);
            Assert.NotEqual(changed.Borders[^1].Role, changed.Borders[^1].Corner);
            Assert.Equal(quilt.Borders, BorderChanges.Dropped(changed)!.Borders);
        }
    }

    [Fact]
    public void There_is_an_end_both_ways()
    {
        var quilt = Quilt("ostrel-bay-stars.json") with { Borders = [] };
        Assert.Null(BorderChanges.Dropped(quilt));
        Assert.Null(BorderChanges.Cornered(quilt, BorderStyle.Mitered));
        for (var i = 0; i < QuiltLimits.Borders; i++)
        {
            quilt = BorderChanges.Added(quilt)!;
        }

        Assert.Null(BorderChanges.Added(quilt));
    }
}
