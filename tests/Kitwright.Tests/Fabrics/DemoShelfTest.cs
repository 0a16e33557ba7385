using Kitwright.Measure;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Fabrics;

/// <summary>The demo shelf holds together with itself and with the demo quilts.</summary>
public sealed class DemoShelfTest
{
    private static readonly string[][] Lines =
    [
        .. Repository.Read("examples", "stock.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(',')),
    ];

    private static IEnumerable<string[]> Bolts => Lines.Skip(1);

    [Fact]
    public void Has_the_columns_that_its_readme_states() =>
        Assert.Equal(
            ["fabric", "name", "lot", "bolt", "width", "yards", "price", "color", "print", "second", "seed"],
            Lines[0]
        );

    [Fact]
    public void Holds_sixty_fabrics_or_more_and_some_on_two_lots()
    {
        Assert.True(Bolts.Select(b => b[0]).Distinct().Count() >= 60);
        Assert.Contains(Bolts.GroupBy(b => b[0]), fabric => fabric.Select(b => b[2]).Distinct().Count() > 1);
    }

    [Fact]
    public void Each_bolt_is_its_own_and_each_fabric_says_the_same_on_all_its_bolts()
    {
        Assert.Equal(Bolts.Count(), Bolts.Select(b => b[3]).Distinct().Count());
        Assert.All(
            Bolts.GroupBy(b => b[0]),
            fabric => Assert.Single(fabric.Select(b => string.Join(',', [b[1], b[4], .. b[6..]])).Distinct())
        );
    }

    [Fact]
    public void Lengths_and_widths_are_lengths() =>
        Assert.All(
            Bolts,
            b =>
            {
                Assert.True(LengthText.TryParse(b[4], out var width) && width >= Length.Inches(40));
                Assert.True(LengthText.TryParse(b[5], out var left, LengthUnit.Yard) && left.Sign > 0);
            }
        );

    [Fact]
    public void Every_colorway_takes_its_fabrics_from_the_shelf()
    {
        var shelf = Bolts.Select(b => b[0]).ToHashSet();
        foreach (var file in Directory.GetFiles(Repository.PathOf("examples", "quilts"), "*.json"))
        {
            var quilt = QuiltFile.Read(File.ReadAllText(file)).Value!;
            Assert.All(quilt.Colorways.SelectMany(c => c.Fabrics.Values), number => Assert.Contains(number, shelf));
        }
    }
}
