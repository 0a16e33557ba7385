namespace Kitwright.Fabrics.Prints;

/// <summary>Whole numbers from a seed, the same everywhere.</summary>
/// <remarks>
/// SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014; constants from
/// memory. Modulo bias is below one in 2^40 here, and a print does not mind it.
/// </remarks>
internal sealed class SeededDice(int seed)
{
    private ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);

    /// <summary>At least <paramref name="least"/>, below <paramref name="end"/>.</summary>
    public int Roll(int least, int end) => least + (int)(Next() % (ulong)(end - least));

    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
