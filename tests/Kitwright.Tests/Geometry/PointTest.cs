using CsCheck;
using Kitwright.Geometry;
using Xunit;

namespace Kitwright.Tests.Geometry;

public sealed class PointTest
{
    [Fact]
    public void Equality_is_by_parts() => Contract.Equality(Generate.Points, p => new Point(-(-p.X), -(-p.Y)));

    [Fact]
    public void Addition_is_a_group() => Contract.Addition(Generate.Points, (p, q) => p + q, p => -p);

    [Fact]
    public void Default_is_the_origin() => Assert.Equal(Point.Origin, new Point(0, 0));

    [Fact]
    public void Dot_and_cross_are_bilinear() =>
        Gen.Select(Generate.Points, Generate.Points, Generate.Points, Generate.SmallSurds)
            .Sample(
                (p, q, r, factor) =>
                {
                    Assert.Equal(Point.Dot(p, q), Point.Dot(q, p));
                    Assert.Equal(Point.Cross(p, q), -Point.Cross(q, p));
                    Assert.Equal(Point.Dot(p + r, q), Point.Dot(p, q) + Point.Dot(r, q));
                    Assert.Equal(Point.Cross(p * factor, q), Point.Cross(p, q) * factor);
                    Assert.Equal(0, Point.Cross(p, p));
                }
            );

    [Fact]
    public void The_area_between_steps_turns_with_the_plane() =>
        Gen.Select(Generate.Motions, Generate.Points, Generate.Points)
            .Sample(
                (m, p, q) =>
                {
                    Point o = m.Apply(Point.Origin),
                        p2 = m.Apply(p) - o,
                        q2 = m.Apply(q) - o;
                    Assert.Equal(Point.Dot(p, q), Point.Dot(p2, q2));
                    Assert.Equal(Point.Cross(p, q) * (m.Mirrors ? -1 : 1), Point.Cross(p2, q2));
                }
            );
}
