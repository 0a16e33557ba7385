using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests;

public sealed class SurdTest
{
    [Fact]
    public void Inverse_times_the_number_is_one()
    {
        var x = new Surd(3, new(1, 2), new(-2, 3), 1);
        Assert.Equal(new Surd(Rational.One), x * (1 / x));
    }

    [Fact]
    public void Sign_is_exact_where_doubles_cannot_tell()
    {
        // 577/408 is a convergent of √2, just above it.
        Assert.Equal(1, (new Surd(new Rational(577, 408)) - Surd.OfRoot2(1)).Sign);
        Assert.Equal(Length.Inches(0, 7, 8), (Surd.OfRoot2(new(1, 4)) + new Rational(1, 2)).RoundUpTo(Length.Inches(0, 1, 8)));
    }
}
