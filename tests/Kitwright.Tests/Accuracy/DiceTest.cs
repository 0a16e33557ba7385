using Kitwright.Accuracy;
using Xunit;

namespace Kitwright.Tests.Accuracy;

/// <summary>The random numbers of the simulation against the normal distribution, within 4 standard errors at fixed seeds.</summary>
public sealed class DiceTest
{
    private const int Throws = 400_000;

    private static double[] Numbers(ulong seed)
    {
        var dice = new Dice(seed);
        return [.. Enumerable.Range(0, Throws).Select(_ => dice.Normal())];
    }

    /// <summary>Shares beyond a bound, from the common table of the standard normal distribution (any textbook of statistics).</summary>
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(0.5, 0.308538)]
    [InlineData(1, 0.158655)]
    [InlineData(2, 0.022750)]
    [InlineData(3, 0.001350)]
    [InlineData(3.5, 0.000233)]
    public void As_many_lie_beyond_a_bound_as_the_table_says(double bound, double share)
    {
        var numbers = Numbers(seed: 11);
        var error = 4 * Math.Sqrt(share * (1 - share) / Throws);
        Assert.InRange(numbers.Count(x => x > bound) / (double)Throws, share - error, share + error);
        Assert.InRange(numbers.Count(x => x < -bound) / (double)Throws, share - error, share + error);
    }

    /// <summary>Moments 0, 1, 0, 3, with the variances of x, x², x³ and x⁴: 1, 2, 15 and 96.</summary>
    [Theory]
    [InlineData(1, 0, 1)]
    [InlineData(2, 1, 2)]
    [InlineData(3, 0, 15)]
    [InlineData(4, 3, 96)]
    public void Moments_are_the_normal_ones(int power, double moment, double variance)
    {
        var mean = Numbers(seed: 12).Average(x => Math.Pow(x, power));
        var error = 4 * Math.Sqrt(variance / Throws);
        Assert.InRange(mean, moment - error, moment + error);
    }
}
