using CsCheck;
using Kitwright.Geometry;
using Xunit;

namespace Kitwright.Tests.Geometry;

public sealed class LineTest
{
    [Fact]
    public void Left_is_positive()
    {
        var up = new Line(Point.Origin, new(0, 1));
        Assert.Equal(1, up.SideOf(new(-1, 5)));
        Assert.Equal(-1, up.SideOf(new(1, -5)));
        Assert.Equal(0, up.SideOf(new(0, 7)));
    }

    [Fact]
    public void Reversed_swaps_the_sides() =>
        Gen.Select(Generate.Lines, Generate.Points)
            .Sample((line, p) => Assert.Equal(-line.SideOf(p), line.Reversed.SideOf(p)));

    [Fact]
    public void Points_along_the_line_are_on_it() =>
        Gen.Select(Generate.Lines, Generate.SmallSurds)
            .Sample((line, factor) => Assert.Equal(0, line.SideOf(line.From + (line.Step * factor))));

    [Fact]
    public void Sides_move_with_the_plane_and_swap_in_a_mirror() =>
        Gen.Select(Generate.Motions, Generate.Lines, Generate.Points)
            .Sample(
                (m, line, p) =>
                    Assert.Equal(line.SideOf(p) * (m.Mirrors ? -1 : 1), m.Apply(line).SideOf(m.Apply(p)))
            );

    [Fact]
    public void Equality_is_by_points() => Contract.Equality(Generate.Lines, line => line.Reversed.Reversed);
}
