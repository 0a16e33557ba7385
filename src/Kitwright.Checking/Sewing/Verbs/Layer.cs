using Kitwright.Checking.Exact;
using Kitwright.Geometry;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>One of two layers, divided by a seam into its body and what the seam hides.</summary>
/// <param name="Body">Faces on the body's side, in their own coordinates.</param>
/// <param name="Hidden">Faces beyond the seam.</param>
/// <param name="Lies">From the faces' coordinates to the register's.</param>
/// <param name="Own">The seam in the faces' coordinates.</param>
/// <param name="Beyond">The half-plane beyond the seam, in the faces' coordinates.</param>
/// <param name="BodyOnLeft">Whether the body lies to the left of the seam's direction, in the register.</param>
/// <param name="BodyReach">How far the body reaches from the seam, times the length of the seam's step.</param>
/// <param name="HiddenReach">How far the hidden cloth reaches beyond it, times the same.</param>
internal sealed record Layer(
    Face[] Body,
    Face[] Hidden,
    Motion Lies,
    Line Own,
    HalfPlane Beyond,
    bool BodyOnLeft,
    Surd BodyReach,
    Surd HiddenReach
)
{
    /// <summary>Where the body touches the seam.</summary>
    public Spans BodyEdge { get; } = UnderLine.EdgesOf(Body, Own);

    /// <summary>
    /// The body is the side that reaches further from the seam. Null where both reach equally far: then nothing tells
    /// which side is meant to be hidden.
    /// </summary>
    public static Layer? Of(Cloth cloth, Line seam, Effort effort)
    {
        var (left, right) = cloth.Divide(seam, effort);
        var leftSide = HalfPlane.LeftOf(seam).Before(cloth.Lies);
        var rightSide = leftSide.Opposite;
        Surd toLeft = Reach(left, leftSide),
            toRight = Reach(right, rightSide);
        var own = cloth.OwnLine(seam);
        return toLeft == toRight ? null
            : toLeft > toRight ? new(left, right, cloth.Lies, own, rightSide, true, toLeft, toRight)
            : new(right, left, cloth.Lies, own, leftSide, false, toRight, toLeft);
    }

    private static Surd Reach(Face[] faces, HalfPlane half)
    {
        var reach = Surd.Zero;
        var least = Near.Of(reach).Low;
        foreach (var face in faces)
        {
            for (var i = 0; i < face.Shape.Count; i++)
            {
                if (half.Near(face.Shape, i).High < least)
                {
                    continue;
                }

                var at = half.At(face.Shape[i]);
                if (at > reach)
                {
                    reach = at;
                    least = Near.Of(at).Low;
                }
            }
        }

        return reach;
    }
}
