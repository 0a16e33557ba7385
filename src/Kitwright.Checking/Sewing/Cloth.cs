using Kitwright.Checking.Exact;
using Kitwright.Geometry;

namespace Kitwright.Checking.Sewing;

/// <summary>What a register may hold.</summary>
internal abstract class OnTable;

/// <summary>
/// An assembly: faces that do not overlap, and the motion from their own coordinates to the register's. The motion is
/// kept apart, so that turning a large assembly over and back costs nothing.
/// </summary>
internal sealed class Cloth(Face[] faces, Motion lies) : OnTable
{
    public Face[] Faces => faces;
    public Motion Lies => lies;

    /// <summary>Faces are kept as seen from the right side, so a mirroring motion shows the wrong one.</summary>
    public bool RightSideUp => !Rigid.Mirrors(lies);

    public Cloth Moved(Motion motion) => new(faces, Rigid.Compose(lies, motion));

    /// <summary>The faces in the register's coordinates, where the right side is up.</summary>
    public Face[] Laid() => Rigid.IsStill(lies) ? faces : Array.ConvertAll(faces, f => f.Moved(lies));

    /// <summary>Divides along a line of the register's coordinates; left and right as the line's direction has them.</summary>
    public (Face[] Left, Face[] Right) Divide(Line line, Effort effort)
    {
        effort.Spend(faces.Length);
        HalfPlane left = HalfPlane.LeftOf(line).Before(lies),
            right = left.Opposite;
        var lefts = new List<Face>(faces.Length);
        var rights = new List<Face>();
        foreach (var face in faces)
        {
            if (face.Within(left) is { } onLeft)
            {
                lefts.Add(onLeft);
                if (ReferenceEquals(onLeft, face))
                {
                    continue;
                }
            }

            if (face.Within(right) is { } onRight)
            {
                rights.Add(onRight);
            }
        }

        return ([.. lefts], [.. rights]);
    }

    /// <summary>The line in the faces' own coordinates; parameters along it stay the same.</summary>
    public Line OwnLine(Line line)
    {
        var undo = Rigid.Undo(lies);
        return Rigid.IsStill(lies) ? line : new(undo.Apply(line.From), undo.Apply(line.To));
    }
}

/// <summary>
/// Two layers right sides together: the lower right side up, the upper right side down, and the seams in both. The
/// upper layer may be of several assemblies side by side, each held by seams of its own.
/// </summary>
internal sealed class Layers(Cloth bottom, Cloth[] tops, Line[] seams) : OnTable
{
    public Cloth Bottom => bottom;
    public Cloth[] Tops => tops;
    public Line[] Seams => seams;

    /// <summary>Whether it can be turned over: several assemblies would then be a lower layer that does not hang together.</summary>
    public bool MayTurnOver => tops.Length == 1;

    public Layers Moved(Motion motion)
    {
        var moved = Array.ConvertAll(seams, l => new Line(motion.Apply(l.From), motion.Apply(l.To)));
        var b = bottom.Moved(motion);
        var t = Array.ConvertAll(tops, top => top.Moved(motion));
        // Turned over, the two change places.
        return Rigid.Mirrors(motion) ? new(t[0], [b], moved) : new(b, t, moved);
    }
}
