using CsCheck;
using Kitwright.Blocks;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;
using Kitwright.Tests.Quilts;
using Xunit;

namespace Kitwright.Tests.Settings;

/// <summary>The figures of the classic settings, read off the laid-out top: where is it dark?</summary>
public sealed class ClassicSettingsTest
{
    // Dark in the lower right half, drawn as a triangle.
    private static readonly Block Halved = Samples.Of(
        "halved",
        Length.Inches(2),
        Length.Inches(2),
        new([new(0, 0), new(2, 2), new(0, 2)]),
        new([new(0, 0), new(2, 0), new(2, 2)])
    );

    private static readonly Gen<(int Columns, int Rows)> Even = Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4], (c, r) => (2 * c, 2 * r));

    /// <summary>Whether a point of the top is dark; cells measure 2 by 2, and the point must lie on no seam.</summary>
    private static Func<Rational, Rational, bool> Dark(ClassicSetting setting, int columns, int rows)
    {
        var cells = ClassicSettings.Cells(setting, "halved", BlockCorner.LowerRight, columns, rows);
        var design = Layout.Of(Samples.Quilt([Halved], new Setting(SettingKind.Straight, columns, rows, cells, null)));
        var dark = design
            .Placements.SelectMany(place => design.Blocks[0].Patches.Where(p => p.Role == "dark").Select(p => p.Shape.Moved(place.Motion)))
            .ToList();
        return (x, y) => dark.Exists(shape => shape.Where(new Point(x, y)) == Side.Inside);
    }

    private static IEnumerable<(Rational X, Rational Y)> Spots(int columns, int rows) =>
        from x in Enumerable.Range(0, 4 * columns)
        from y in Enumerable.Range(0, 4 * rows)
        select (new Rational((4 * x) + 1, 8), new Rational((4 * y) + 2, 8));

    [Fact]
    public void Barn_raising_is_rings_round_the_middle() =>
        Even.Sample(
            size =>
            {
                var dark = Dark(ClassicSetting.BarnRaising, size.Columns, size.Rows);
                // By the distance from the middle, level plus upright, in rings of one block's side.
                Assert.All(
                    Spots(size.Columns, size.Rows),
                    spot =>
                    {
                        var ring = (Rational.Abs(spot.X - size.Columns) + Rational.Abs(spot.Y - size.Rows)) / 2;
                        Assert.Equal(ring.Floor() % 2 == 1, dark(spot.X, spot.Y));
                    }
                );
            },
            iter: 8
        );

    [Fact]
    public void Straight_furrows_run_along_one_diagonal() =>
        Even.Sample(
            size =>
            {
                var dark = Dark(ClassicSetting.StraightFurrows, size.Columns, size.Rows);
                var top = 2 * size.Rows;
                Assert.All(
                    Spots(size.Columns, size.Rows),
                    spot => Assert.Equal((((spot.X + (top - spot.Y)) / 2).Floor() % 2) == 1, dark(spot.X, spot.Y))
                );
            },
            iter: 8
        );

    [Fact]
    public void Light_and_dark_is_a_diamond_about_every_other_corner() =>
        Even.Sample(
            size =>
            {
                var dark = Dark(ClassicSetting.LightAndDark, size.Columns, size.Rows);
                Assert.All(
                    Spots(size.Columns, size.Rows),
                    spot =>
                    {
                        // The nearest corner that four blocks share lies in the middle of a square of 4 by 4.
                        Rational x = spot.X - ((spot.X / 4).Floor() * 4) - 2,
                            y = spot.Y - ((spot.Y / 4).Floor() * 4) - 2;
                        Assert.Equal(Rational.Abs(x) + Rational.Abs(y) < 2, dark(spot.X, spot.Y));
                    }
                );
            },
            iter: 8
        );

    [Fact]
    public void Streak_of_lightning_zigzags_across() =>
        Even.Sample(
            size =>
            {
                var dark = Dark(ClassicSetting.StreakOfLightning, size.Columns, size.Rows);
                var top = 2 * size.Rows;
                Assert.All(
                    Spots(size.Columns, size.Rows),
                    spot =>
                    {
                        // Down by as much as the nearest peak is away, peaks between the columns of a pair.
                        var away = Rational.Abs(spot.X - ((spot.X / 4).Floor() * 4) - 2);
                        Assert.Equal((((top - spot.Y - away) / 2).Floor() & 1) == 0, dark(spot.X, spot.Y));
                    }
                );
            },
            iter: 8
        );

    // [SPRUCE] four blocks repeat in a barn raising; own: so both counts are even.
    [Theory]
    [InlineData(ClassicSetting.BarnRaising, 8, 6, true)]
    [InlineData(ClassicSetting.BarnRaising, 8, 7, false)]
    [InlineData(ClassicSetting.LightAndDark, 5, 6, false)]
    [InlineData(ClassicSetting.StreakOfLightning, 6, 7, true)]
    [InlineData(ClassicSetting.StreakOfLightning, 7, 6, false)]
    [InlineData(ClassicSetting.StraightFurrows, 5, 7, true)]
    public void A_figure_comes_out_whole_with_the_right_counts(ClassicSetting setting, int columns, int rows, bool whole) =>
        Assert.Equal(whole, ClassicSettings.Completes(setting, columns, rows));

    [Fact]
    public void The_dark_half_turns_with_the_block()
    {
        var cabin = BlockBook.Find("log-cabin")!.At(Length.Inches(11));
        var values = BlockBook.Find("log-cabin")!.Roles.ToDictionary(r => r.Id, r => r.Value);
        var corners = CutBlocks.Positions(cabin).Where((_, i) => i % 2 == 0).Select(b => DarkHalf.Of(b, role => values[role])).ToList();
        Assert.Equal(4, corners.Distinct().Count());
        Assert.DoesNotContain(null, corners);
        Assert.Null(DarkHalf.Of(BlockBook.Find("nine-patch")!.At(Length.Inches(6)), _ => Value.Dark));
    }
}
