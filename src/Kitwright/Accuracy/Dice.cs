namespace Kitwright.Accuracy;

/// <summary>Random numbers that are the same on every machine for the same seed.</summary>
/// <remarks>
/// xoshiro256** (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", ACM Transactions on
/// Mathematical Software 47(4), 2021), seeded by splitmix64; normal numbers by the polar method (G. Marsaglia, T. A.
/// Bray, "A convenient method for generating normal variables", SIAM Review 6(3), 1964). Both from memory.
/// </remarks>
internal sealed class Dice
{
    private ulong a;
    private ulong b;
    private ulong c;
    private ulong d;
    private double spare;
    private bool hasSpare;

    public Dice(ulong seed)
    {
        (a, b, c, d) = (Split(ref seed), Split(ref seed), Split(ref seed), Split(ref seed));
    }

    private static ulong Split(ref ulong state)
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    private ulong Next()
    {
        unchecked
        {
            var result = ulong.RotateLeft(b * 5, 7) * 9;
            var t = b << 17;
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = ulong.RotateLeft(d, 45);
            return result;
        }
    }

    /// <summary>From −1 to 1.</summary>
    private double Even() => ((Next() >> 11) * (1.0 / (1UL << 52))) - 1;

    /// <summary>Mean 0, deviation 1.</summary>
    public double Normal()
    {
        if (hasSpare)
        {
            hasSpare = false;
            return spare;
        }

        while (true)
        {
            double x = Even(),
                y = Even(),
                square = (x * x) + (y * y);
            if (square is < 1 and > 0)
            {
                var factor = Math.Sqrt(-2 * Math.Log(square) / square);
                spare = y * factor;
                hasSpare = true;
                return x * factor;
            }
        }
    }
}
