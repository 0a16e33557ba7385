using Kitwright.Measure;

namespace Kitwright.Piecing;

/// <summary>What a technique works with: the cut list so far, seams, letters, cloth, and how many units are wanted.</summary>
/// <param name="StripLength">What one strip of the cloth holds.</param>
/// <param name="Wanted">Copies of the unit; 0 while that is not known yet.</param>
internal sealed record Making(PieceBook Book, Seams Seams, Letters Letters, Length StripLength, int Wanted);
