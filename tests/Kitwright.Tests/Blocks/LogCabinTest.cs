using System.Text.Json.Nodes;
using CsCheck;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Blocks;

/// <summary>Log cabins against published blocks: cut lengths in sewing order, less the seams.</summary>
public sealed class LogCabinTest
{
    private static readonly Rational Seams = new(1, 2);

    private static LogCabinPlan Plan(LogLay lay, Rational center, Rational log, int rounds, bool cornerstones = false) =>
        new(lay, center, log, log, rounds, LogSide.Right, false, rounds, cornerstones, []);

    /// <summary>The longer cut side of every patch, by role, in the order of sewing.</summary>
    private static List<(string Role, Rational Cut)> Cut(LogCabinPlan plan)
    {
        var block = LogCabin.Draw("cabin", "cabin", null, plan);
        // The drawing is in whole units; its first patch is the center.
        var scale = Longer(block.Patches[0]) / plan.Center;
        return [.. block.Patches.Select(p => (p.Role, (Longer(p) / scale) + Seams))];
    }

    private static Rational Longer(BlockPatch patch)
    {
        var (low, high) = new Kitwright.Geometry.Polygon(patch.Corners).Bounds();
        var size = high - low;
        return Rational.Max(size.X.One, size.Y.One);
    }

    private static Rational[] Named(List<(string Role, Rational Cut)> pieces, string start) =>
        [.. pieces.Where(p => p.Role.StartsWith(start, StringComparison.Ordinal)).Select(p => p.Cut)];

    // [APQ-LC] center 1 1/2 cut, strips 1 1/2: L 1½, 2½; D 2½, 3½; L 3½, 4½; … D 10½, 11½; 21 pieces, 11 in finished.
    // Light and dark logs add up to 60 and 70 in of strip as cut.
    [Fact]
    public void Eleven_inch_block_of_five_rounds()
    {
        var cut = Cut(Plan(LogLay.Round, 1, 1, 5));
        Assert.Equal(21, cut.Count);
        Assert.Equal(11, LogCabin.Draw("cabin", "cabin", null, Plan(LogLay.Round, 1, 1, 5)).Grid.Columns);
        Assert.Equal(Halves(3, 5, 7, 9, 11, 13, 15, 17, 19, 21), Named(cut, "light"));
        Assert.Equal(Halves(5, 7, 9, 11, 13, 15, 17, 19, 21, 23), Named(cut, "dark"));
        Assert.Equal(60, Sum(Named(cut, "light")));
        Assert.Equal(70, Sum(Named(cut, "dark")));
    }

    // [BRUN] center 3 cut, strips 1 3/4: L 3, 4¼; D 4¼, 5½; L 5½, 6¾; D 6¾, 8; L 8, 9¼; D 9¼, 10½; 10 in finished.
    [Fact]
    public void Ten_inch_block_of_three_rounds()
    {
        var cut = Cut(Plan(LogLay.Round, new(5, 2), new(5, 4), 3));
        Assert.Equal([3, new(17, 4), new(11, 2), new(27, 4), 8, new(37, 4)], Named(cut, "light"));
        Assert.Equal([new(17, 4), new(11, 2), new(27, 4), 8, new(37, 4), new(21, 2)], Named(cut, "dark"));
    }

    // [STITCH] quarter log cabin: center 3½ cut, strips 2: 3½, 5, 5, 6½, 6½, 8.
    [Fact]
    public void Quarter_log_cabin()
    {
        var cut = Cut(Plan(LogLay.Quarter, 3, new(3, 2), 3));
        Assert.Equal(Halves(7, 10, 13), Named(cut, "light"));
        Assert.Equal(Halves(10, 13, 16), Named(cut, "dark"));
    }

    // [QWV] courthouse steps: center 4½ cut, strips 2½: 2 × 4½, 2 × 8½, 2 × 8½, 2 × 12½.
    [Fact]
    public void Courthouse_steps()
    {
        var cut = Cut(Plan(LogLay.CourthouseSteps, 4, 2, 2));
        Assert.Equal(Halves(9, 9, 17, 17), Named(cut, "light"));
        Assert.Equal(Halves(17, 17, 25, 25), Named(cut, "dark"));
    }

    // [LBQ] courthouse steps with cornerstones: strips 3½, 6½, 9½, four of each, and 12 squares of 2 as cut.
    [Fact]
    public void Courthouse_steps_with_cornerstones()
    {
        var cut = Cut(Plan(LogLay.CourthouseSteps, 3, new(3, 2), 3, cornerstones: true));
        Assert.Equal(Halves(7, 7, 13, 13, 19, 19), Named(cut, "light"));
        Assert.Equal(Halves(7, 7, 13, 13, 19, 19), Named(cut, "dark"));
        Assert.Equal(Enumerable.Repeat((Rational)2, 12), Named(cut, "stone"));
    }

    [Fact]
    public void Any_parameters_fill_the_block()
    {
        var unit =
            from round in Gen.Int[1, 3]
            from side in Gen.Enum<LogSide>()
            from at in Gen.Enum<LogPlace>()
            from kind in Gen.Enum<LogUnitKind>()
            select new LogUnit(round, side, at, kind);
        var plans =
            from lay in Gen.Enum<LogLay>()
            from center in Gen.Int[8, 16]
            from light in Gen.Int[1, 4]
            from dark in Gen.Int[1, 4]
            from start in Gen.Enum<LogSide>()
            from clockwise in Gen.Bool
            from stones in Gen.Bool
            from units in unit.Array[0, 1]
            select new LogCabinPlan(lay, new(center, 4), new(light, 4), new(dark, 4), 3, start, clockwise, 2, stones, [.. units]);
        plans.Sample(
            plan =>
            {
                var block = LogCabin.Draw("any", "any", null, plan);
                Assert.Empty(Partition.Check(block.At(Length.Inches(block.Grid.Columns)), ""));
            },
            iter: 60
        );
    }

    [Fact]
    public void A_unit_too_long_for_its_log_is_a_finding()
    {
        // The first log of the first round is as long as the center, 2; a goose in it would be twice 3 long.
        var block = JsonNode.Parse(Repository.Read("blocks", "log-cabin-geese.json"))!;
        block["logCabin"]!["light"] = "3";
        block["logCabin"]!["units"]![0]!["round"] = 1;
        block["logCabin"]!["units"]![0]!["side"] = "right";
        var text = block.ToJsonString();
        Assert.Contains(BlockFile.Read(text).Findings, f => f.Rule is "quilt.overlap" or "quilt.outside");
    }

    private static Rational[] Halves(params int[] halves) => [.. halves.Select(h => new Rational(h, 2))];

    private static Rational Sum(Rational[] lengths) => lengths.Aggregate(Rational.Zero, (sum, length) => sum + length);
}
