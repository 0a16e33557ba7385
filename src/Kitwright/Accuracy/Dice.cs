namespace Kitwright.Accuracy;

/// <summary>Random numbers that are the same on every machine for the same seed.</summary>
/// <remarks>
/// xoshiro256** (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", ACM Transactions on
/// Mathematical Software 47(4), 2021), seeded by splitmix64; normal numbers by layers (G. Marsaglia, W. W. Tsang,
/// "The ziggurat method for generating random variables", Journal of Statistical Software 5(8), 2000, with 128 layers).
/// Both from memory; a test holds the numbers against the normal distribution.
/// </remarks>
internal sealed class Dice
{
    private ulong a;
    private ulong b;
    private ulong c;
    private ulong d;

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

    /// <summary>From 0 to 1, without the ends.</summary>
    private double Even() => ((Next() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Mean 0, deviation 1.</summary>
    public double Normal()
    {
        while (true)
        {
            var bits = Next();
            // The lowest bits choose the layer, the highest where in its width, the sign included.
            var layer = (int)(bits & (Layers.Count - 1));
            var place = (unchecked((long)bits) >> 11) * (1.0 / (1L << 52));
            var x = place * Layers.Width[layer];
            if (Math.Abs(x) < Layers.Width[layer + 1])
            {
                return x;
            }

            if (layer == 0)
            {
                return place < 0 ? -Tail() : Tail();
            }

            if (Layers.Height[layer] + (Even() * (Layers.Height[layer + 1] - Layers.Height[layer])) < Math.Exp(-0.5 * x * x))
            {
                return x;
            }
        }
    }

    /// <summary>Beyond the widest layer (Marsaglia 1964, as the article on the layers has it).</summary>
    private double Tail()
    {
        while (true)
        {
            double x = -Math.Log(Even()) / Layers.Last,
                y = -Math.Log(Even());
            if (y + y > x * x)
            {
                return Layers.Last + x;
            }
        }
    }

    /// <summary>The bell above zero in layers of equal area, the lowest with the tail.</summary>
    private static class Layers
    {
        public const int Count = 128;

        /// <summary>Where the tail begins, and the area of each layer, for 128 of them.</summary>
        public const double Last = 3.442619855899;
        private const double Area = 9.91256303526217e-3;

        /// <summary>Half width of each layer, the lowest first; the lowest as wide as its area over its height.</summary>
        public static readonly double[] Width = new double[Count + 1];

        /// <summary>The bell's height at each half width.</summary>
        public static readonly double[] Height = new double[Count + 1];

        static Layers()
        {
            var bell = Math.Exp(-0.5 * Last * Last);
            Width[0] = Area / bell;
            Width[1] = Last;
            for (var i = 2; i < Count; i++)
            {
                bell = Math.Exp(-0.5 * Width[i - 1] * Width[i - 1]);
                Width[i] = Math.Sqrt(-2 * Math.Log(bell + (Area / Width[i - 1])));
            }

            Width[Count] = 0;
            for (var i = 0; i <= Count; i++)
            {
                Height[i] = Math.Exp(-0.5 * Width[i] * Width[i]);
            }
        }
    }
}
