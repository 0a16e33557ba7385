using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Geometry;

/// <summary>The squares for setting triangles by two readings: the published rule, and √2 exact.</summary>
public sealed class SettingTriangleChartTest
{
    private static readonly JsonElement Case = Cases.Open("setting-triangles");
    private static readonly Length Step = Case.Length("step");

    private static IEnumerable<JsonElement> Rows => Case.GetProperty("rows").EnumerateArray();

    private static (Length Side, Length Corner) ByTheRule(Length block)
    {
        var rule = Case.GetProperty("rule");
        var diagonal = rule.Number("diagonal");
        return (
            ((block * diagonal) + rule.Length("side")).RoundUpTo(Step),
            ((block / diagonal) + rule.Length("corner")).RoundUpTo(Step)
        );
    }

    // Seams of 1/4 in: side b√2 + 1/2 + √2/2, corner b/√2 + 1/2 + √2/4 (own arithmetic).
    private static (Surd Side, Surd Corner) Exact(Length block)
    {
        var root2 = Surd.OfRoot2(1);
        Surd half = new Rational(1, 2);
        return (((Surd)block * root2) + half + (root2 / 2), ((Surd)block / root2) + half + (root2 / 4));
    }

    // [TANI], 24 cells.
    [Fact]
    public void The_published_rule_gives_the_published_chart() =>
        Assert.All(Rows, row => Assert.Equal((row.Length("side"), row.Length("corner")), ByTheRule(row.Length("block"))));

    [Fact]
    public void The_exact_reading_differs_in_three_sides_by_one_step()
    {
        Assert.Equal(["7", "10", "13"], Rows.Where(r => r.Has("exactSide")).Select(r => r.GetProperty("block").GetString()));
        Assert.All(
            Rows,
            row =>
            {
                var (side, corner) = Exact(row.Length("block"));
                Assert.Equal(row.Length(row.Has("exactSide") ? "exactSide" : "side"), side.RoundUpTo(Step));
                Assert.Equal(row.Length("corner"), corner.RoundUpTo(Step));
            }
        );
    }

    // [KNK] rounds down.
    [Fact]
    public void A_chart_that_rounds_down_makes_pieces_too_small()
    {
        var wrong = Case.GetProperty("wrong");
        var (side, corner) = Exact(wrong.Length("block"));
        Assert.True(wrong.Length("side") < side);
        Assert.True(wrong.Length("corner") < corner);
        Assert.NotEqual((wrong.Length("side"), wrong.Length("corner")), ByTheRule(wrong.Length("block")));
    }

    // [QC-MC] rounds to the nearest eighth.
    [Fact]
    public void A_chart_that_rounds_to_the_nearest_falls_short_in_four_rows()
    {
        var chart = Cases.Open("block-diagonals");
        var rows = chart.GetProperty("rows").EnumerateArray().ToList();
        Assert.Equal(4, rows.Count(r => r.Has("up")));
        Assert.All(
            rows,
            row =>
            {
                var diagonal = (Surd)row.Length("block") * Surd.OfRoot2(1);
                Assert.Equal(row.Has("up"), row.Length("published") < diagonal);
                Assert.Equal(row.Length(row.Has("up") ? "up" : "published"), diagonal.RoundUpTo(chart.Length("step")));
            }
        );
    }
}
