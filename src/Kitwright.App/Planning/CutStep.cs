using Kitwright.Measure;

namespace Kitwright.App.Planning;

/// <summary>How far the search for one fabric has come.</summary>
/// <param name="Letter">Of the fabric in the swatch key.</param>
/// <param name="Length">The shortest sum of strip heights so far.</param>
/// <param name="Bound">No way of cutting takes less.</param>
public sealed record CutStep(string Letter, Length Length, Length Bound);
