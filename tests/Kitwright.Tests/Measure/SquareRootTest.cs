using System.Numerics;
using CsCheck;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Measure;

public sealed class SquareRootTest
{
    [Fact]
    public void The_root_encloses_its_square() =>
        Generate.Integers.Sample(n =>
        {
            var square = BigInteger.Abs(n);
            var root = SquareRoot.Floor(square);
            Assert.True(root * root <= square && square < (root + 1) * (root + 1));
            Assert.Equal(square, SquareRoot.Floor(square * square));
        });

    [Fact]
    public void Small_roots_are_right()
    {
        int[] expected = [0, 1, 1, 1, 2, 2, 2, 2, 2, 3];
        Assert.Equal(expected, Enumerable.Range(0, 10).Select(n => (int)SquareRoot.Floor(n)));
    }

    [Fact]
    public void A_negative_square_is_a_fault_of_ours() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SquareRoot.Floor(-1));
}
