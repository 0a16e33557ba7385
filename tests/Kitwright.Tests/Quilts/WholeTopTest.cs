using CsCheck;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Blocks, sashing, posts and borders fill the top exactly, whatever the quilt.</summary>
public sealed class WholeTopTest
{
    private static readonly Gen<Border> AnyBorder =
        from width in Gen.Int[1, 90]
        from style in Gen.Enum<BorderStyle>()
        select new Border(
            Length.Inches(new Rational(width, 16)),
            "dark",
            style,
            style == BorderStyle.CornerSquares ? "light" : null,
            StripGrain.Crosswise
        );

    private static readonly Gen<Sashing?> AnySashing = Gen.OneOf(
        Gen.Const((Sashing?)null),
        from width in Gen.Int[1, 40]
        from posts in Gen.Bool
        from outer in Gen.Bool
        select (Sashing?)new Sashing(Length.Inches(new Rational(width, 8)), "dark", posts ? "light" : null, outer)
    );

    [Fact]
    public void Straight_settings_fill_the_top() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4], AnySashing, AnyBorder.Array[0, 3], Gen.Int[0, 3], Gen.Bool)
            .Sample(
                (columns, rows, sashing, borders, turns, mirror) =>
                {
                    // An oblong block that looks different in each of its eight positions.
                    var block = Samples.Of(
                        "flag",
                        Length.Inches(6),
                        Length.Inches(4),
                        new([new(0, 0), new(6, 0), new(6, 1)]),
                        new([new(0, 0), new(6, 1), new(6, 4), new(0, 4)])
                    );
                    var setting = new Setting(SettingKind.Straight, columns, rows, [[new("flag", turns, mirror)]], sashing);
                    var quilt = Samples.Quilt([block], setting, [.. borders]);
                    Assert.Empty(QuiltRules.Check(quilt));
                    Assert.Empty(Partition.Check(Samples.WholeTop(Layout.Of(quilt)), ""));
                },
                iter: 60
            );

    [Theory]
    [MemberData(nameof(DemoQuiltTest.Files), MemberType = typeof(DemoQuiltTest))]
    public void Demo_quilts_fill_their_top(string file)
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", file)).Value!;
        Assert.Empty(Partition.Check(Samples.WholeTop(Layout.Of(quilt)), ""));
    }
}
