using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Plans;

/// <summary>
/// A class of equal pieces as cut with ruler and cutter: always a rectangle. Triangles are cut from it later, by the
/// sewing plan's own cuts.
/// </summary>
/// <param name="Id"><c>piece/A3</c>.</param>
/// <param name="Label">What the stack's label says: the fabric's letter and the order of use, "A3".</param>
/// <param name="Role">The role whose fabric it is cut from.</param>
/// <param name="Width">Cut size in inches along the width of fabric when laid unturned.</param>
/// <param name="Height">Cut size in inches along the length of fabric when laid unturned.</param>
/// <param name="Count">How many the sewing plan uses.</param>
/// <param name="Spare">How many more are cut on purpose.</param>
/// <param name="MayTurn">Whether it may be cut with width and height exchanged.</param>
/// <param name="Use">What it becomes, for the cut list: "sky of flying geese", "border strip".</param>
/// <param name="Why">The arithmetic behind the size: "3 in finished + 7/8 in = 3 7/8 in".</param>
public sealed record CutPiece(
    PathId Id,
    string Label,
    string Role,
    Length Width,
    Length Height,
    int Count,
    int Spare,
    bool MayTurn,
    Message Use,
    Message Why
)
{
    public int ToCut => Count + Spare;

    /// <summary>How it must lie on the cloth.</summary>
    public CutGrain Grain { get; init; }

    /// <summary>Whether what is cut from it differs from its own mirror image, and which of the two it is.</summary>
    public Hand Hand { get; init; }

    /// <summary>
    /// The class of the same fabric and size that becomes the mirror image; null where the quilt has none, or nothing
    /// has a hand.
    /// </summary>
    public PathId? Mirror { get; init; }
}

/// <summary>
/// The hand of a shape with its right side up. Go round it counterclockwise and note each side's squared length with
/// the scalar product of that side and the next; begin where the list comes first in order. Do the same with its
/// mirror image: the shape whose list comes first is the left one. A list equal to its mirror's has no hand.
/// </summary>
public enum Hand
{
    /// <summary>It is its own mirror image: cloth may lie either side up.</summary>
    Either,

    Left,

    Right,
}

/// <summary>Which way the threads of a cut piece run, where that is decided.</summary>
public enum CutGrain
{
    /// <summary>Straight, either way round.</summary>
    Straight,

    /// <summary>Its width lies across the cloth, from selvage to selvage.</summary>
    Crosswise,

    /// <summary>Its height lies along the selvage, and is cut in one piece.</summary>
    Lengthwise,

    /// <summary>Strips are cut from it at 45 degrees to the threads.</summary>
    Bias,
}
