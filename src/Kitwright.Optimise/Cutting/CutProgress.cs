using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>Where a search stands.</summary>
/// <param name="Length">The shortest sum of strip heights so far.</param>
/// <param name="Bound">No plan takes less.</param>
public readonly record struct CutProgress(Length Length, Length Bound);
