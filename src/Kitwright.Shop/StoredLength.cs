using Kitwright.Measure;

namespace Kitwright.Shop;

internal static class StoredLength
{
    /// <summary>Whole ticks.</summary>
    /// <exception cref="ArgumentException">The length is not on the stored grid; callers check what users type.</exception>
    public static long InTicks(this Length length) =>
        length.TryTicks(out var ticks) ? ticks : throw new ArgumentException($"{length} is no whole number of ticks.");
}
