using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Geometry;

public sealed class MotionTest
{
    [Fact]
    public void Motions_are_a_group() =>
        Gen.Select(Generate.Motions, Generate.Motions, Generate.Motions)
            .Sample(
                (m, n, o) =>
                {
                    Assert.Equal(m.Then(n).Then(o), m.Then(n.Then(o)));
                    Assert.Equal(m, m.Then(Motion.Identity));
                    Assert.Equal(m, Motion.Identity.Then(m));
                    Assert.Equal(Motion.Identity, m.Then(m.Inverse()));
                    Assert.Equal(Motion.Identity, m.Inverse().Then(m));
                }
            );

    [Fact]
    public void Then_applies_one_after_the_other() =>
        Gen.Select(Generate.Motions, Generate.Motions, Generate.Points)
            .Sample((m, n, p) => Assert.Equal(n.Apply(m.Apply(p)), m.Then(n).Apply(p)));

    [Fact]
    public void Motions_are_rigid() =>
        Gen.Select(Generate.Motions, Generate.Points, Generate.Points)
            .Sample(
                (m, p, q) =>
                {
                    Assert.True(m.IsRigid);
                    Assert.True(m.Inverse().IsRigid);
                    Point before = q - p,
                        after = m.Apply(q) - m.Apply(p);
                    Assert.Equal(Point.Dot(before, before), Point.Dot(after, after));
                }
            );

    [Fact]
    public void Mirrors_multiply() =>
        Gen.Select(Generate.Motions, Generate.Motions)
            .Sample(
                (m, n) =>
                {
                    Assert.Equal(m.Mirrors ^ n.Mirrors, m.Then(n).Mirrors);
                    Assert.Equal(m.Mirrors, m.Inverse().Mirrors);
                }
            );

    [Fact]
    public void A_mirror_image_twice_is_where_it_was() =>
        Gen.Select(Generate.Lines, Generate.Points)
            .Sample(
                (line, p) =>
                {
                    var mirror = Motion.Reflect(line);
                    Assert.True(mirror.Mirrors && mirror.IsRigid);
                    Assert.Equal(Motion.Identity, mirror.Then(mirror));
                    Assert.Equal(line, mirror.Apply(line));
                    Assert.Equal(-line.SideOf(p), line.SideOf(mirror.Apply(p)));
                    Assert.Equal(mirror, Motion.Reflect(line.Reversed));
                }
            );

    [Fact]
    public void Quarter_turns_and_a_mirror_are_the_eight_symmetries_of_the_square()
    {
        var flip = Motion.Reflect(new(Point.Origin, new(0, 1)));
        var eight = Enumerable
            .Range(0, 4)
            .SelectMany(turns => new[] { Motion.QuarterTurns(turns), flip.Then(Motion.QuarterTurns(turns)) })
            .ToHashSet();
        Assert.Equal(8, eight.Count);
        Assert.All(eight, m => Assert.All(eight, n => Assert.Contains(m.Then(n), eight)));
        Assert.Equal(4, eight.Count(m => m.Mirrors));
        Point corner = new(3, 1);
        Assert.Equal(8, eight.Select(m => m.Apply(corner)).Distinct().Count());
    }

    [Fact]
    public void Turns_add_up_around_the_circle() =>
        Gen.Select(Gen.Int[-40, 40], Gen.Int[-40, 40])
            .Sample(
                (m, n) =>
                {
                    Assert.Equal(Motion.EighthTurns(m + n), Motion.EighthTurns(m).Then(Motion.EighthTurns(n)));
                    Assert.Equal(Motion.QuarterTurns(m), Motion.EighthTurns(2 * m));
                    Assert.Equal(Motion.EighthTurns(m), Motion.EighthTurns(m + 8));
                }
            );

    [Fact]
    public void An_eighth_turn_is_counterclockwise_by_45_degrees() =>
        Assert.Equal(
            new Point(Surd.OfRoot2(new(1, 2)), Surd.OfRoot2(new(1, 2))),
            Motion.EighthTurns(1).Apply(new Point(1, 0))
        );

    [Fact]
    public void What_stretches_or_shears_is_not_rigid()
    {
        Assert.False(default(Motion).IsRigid);
        Assert.False(new Motion(2, 0, 0, new Rational(1, 2), 0, 0).IsRigid);
        Assert.False(new Motion(1, 1, 0, 1, 0, 0).IsRigid);
    }

    [Fact]
    public void Equality_is_by_parts() =>
        Contract.Equality(Generate.Motions, m => m.Then(Motion.Shift(1, Surd.OfRoot2(1))).Then(Motion.Shift(-1, Surd.OfRoot2(-1))));
}
