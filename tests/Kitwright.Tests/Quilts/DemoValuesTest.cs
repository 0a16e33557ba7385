using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Light and dark make the figure: the demo colorways keep what the trade asks of values.</summary>
public sealed class DemoValuesTest
{
    private static readonly Dictionary<string, double> Lightness = Repository
        .Read("examples", "stock.csv")
        .Split('\n', StringSplitOptions.RemoveEmptyEntries)
        .Skip(1)
        .Select(line => line.Split(','))
        .DistinctBy(cells => cells[0])
        .ToDictionary(cells => cells[0], cells => CieLightness(cells[7]));

    // L* of CIE 15 by way of sRGB (IEC 61966-2-1), both from memory: 0 is black, 100 is white.
    private static double CieLightness(string color)
    {
        double Linear(int at)
        {
            var v = Convert.ToInt32(color.Substring(at, 2), 16) / 255.0;
            return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
        }

        var y = (0.2126 * Linear(1)) + (0.7152 * Linear(3)) + (0.0722 * Linear(5));
        return y > 216.0 / 24389 ? (116 * Math.Cbrt(y)) - 16 : y * 24389 / 27;
    }

    private static Quilt Demo(string file) => QuiltFile.Read(Repository.Read("examples", "quilts", file)).Value!;

    // Common practice, no source: the darkest light never meets the lightest dark, and each half is a gradation.
    [Fact]
    public void Log_cabin_runs_from_light_to_dark_with_a_step_between_the_halves()
    {
        Assert.All(
            Demo("lantern-steps.json").Colorways,
            colorway =>
            {
                string[] roles = ["light1", "light2", "light3", "dark1", "dark2", "dark3"];
                var values = roles.Select(r => Lightness[colorway.Fabrics[r]]).ToArray();
                Assert.Equal(values.OrderDescending(), values);
                Assert.True(values[2] - values[3] > 15, $"{colorway.Name}: {values[2]:0} and {values[3]:0}");
            }
        );
    }

    // Courthouse steps: a round is two light logs on opposite sides, then two dark ones across their ends.
    [Fact]
    public void Log_cabin_has_five_rounds_about_its_center_and_hourglass_units_at_two_corners()
    {
        var patches = Assert.Single(Demo("lantern-steps.json").Blocks).Patches;
        var logs = patches.Where(p => p.Role.StartsWith("light", StringComparison.Ordinal) || p.Role.StartsWith("dark", StringComparison.Ordinal)).Where(p => p.Corners.Length == 4);
        Assert.Equal((10, 10), (logs.Count(p => p.Role[0] == 'l'), logs.Count(p => p.Role[0] == 'd')));
        var triangles = patches.Where(p => p.Corners.Length == 3).ToList();
        Assert.Equal(2 * 4, triangles.Count);
        // The four triangles of an hourglass meet in its center.
        Assert.Equal([4, 4], triangles.GroupBy(t => t.Corners.Single(c => triangles.Count(o => o.Corners.Contains(c)) == 4)).Select(g => g.Count()));
    }

    [Fact]
    public void Star_points_stand_off_the_background() =>
        Assert.All(
            Demo("ostrel-bay-stars.json").Colorways,
            colorway =>
            {
                var background = Lightness[colorway.Fabrics["background"]];
                Assert.True(background - Lightness[colorway.Fabrics["star"]] > 30, colorway.Name);
                Assert.True(background - Lightness[colorway.Fabrics["second"]] > 30, colorway.Name);
            }
        );

    [Fact]
    public void Scrappy_stars_stand_off_their_ground()
    {
        var quilt = Demo("forty-bags-friendship.json");
        var fabrics = quilt.Colorways[0].Fabrics;
        Assert.All(
            quilt.Blocks,
            block =>
            {
                var roles = block.Patches.Select(p => p.Role).Distinct().ToList();
                var dark = roles.Single(r => r.StartsWith("dark", StringComparison.Ordinal));
                var light = roles.Single(r => r.StartsWith("light", StringComparison.Ordinal));
                Assert.True(Lightness[fabrics[light]] - Lightness[fabrics[dark]] > 20, block.Name);
            }
        );
    }

    [Fact]
    public void Each_quilt_is_of_the_kind_and_extent_that_the_readme_states()
    {
        var cabin = Demo("lantern-steps.json");
        Assert.Equal((42, 12), (cabin.Setting.Columns * cabin.Setting.Rows, cabin.Colorways.Length));
        Assert.Equal((SettingKind.Straight, true, 1), (cabin.Setting.Kind, cabin.Setting.Sashing is null, cabin.Borders.Length));
        Assert.InRange(cabin.Colorways.SelectMany(c => c.Fabrics.Values).Distinct().Count(), 60, 1_000);
        Assert.Equal(SettingKind.OnPoint, Demo("tidemark-nine-patch.json").Setting.Kind);
        var scrappy = Demo("forty-bags-friendship.json");
        Assert.All(
            scrappy.Colorways,
            c => Assert.Equal(40, c.Fabrics.Where(f => f.Key.StartsWith("light", StringComparison.Ordinal) || f.Key.StartsWith("dark", StringComparison.Ordinal)).Select(f => f.Value).Distinct().Count())
        );
    }
}
