using Kitwright.Measure;

namespace Kitwright.Fabrics;

/// <summary>Equal pieces of one fabric that were left of something and lie on the shop's shelf.</summary>
/// <param name="Fabric">The fabric's number.</param>
/// <param name="Width">Across the fabric.</param>
/// <param name="Height">Along the fabric.</param>
/// <param name="Count">How many there are; above zero.</param>
public sealed record Offcut(string Fabric, Length Width, Length Height, int Count)
{
    /// <summary>What the newest of them were left of, such as the path of a plan; null where nothing was said.</summary>
    public string? From { get; init; }
}
