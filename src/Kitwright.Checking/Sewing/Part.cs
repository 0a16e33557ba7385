using Kitwright.Checking.Exact;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>One thing that a recipe's run lays on the table: a cut piece, or a copy of an earlier unit.</summary>
/// <remarks>Compared by identity: two pieces of one class are two parts.</remarks>
internal abstract class Part
{
    public abstract PathId Of { get; }
}

internal sealed class TakenPiece(CutPiece piece, PathId recipe) : Part
{
    public CutPiece Piece => piece;

    /// <summary>The recipe that first takes the piece.</summary>
    public PathId Recipe => recipe;
    public override PathId Of => piece.Id;
}

internal sealed class UsedUnit(Unit unit) : Part
{
    public Unit Unit => unit;
    public override PathId Of => unit.Recipe.Id;
}

/// <summary>What one verified copy of a recipe's unit looks like, in the unit's coordinates.</summary>
internal sealed class Unit(Recipe recipe, Face[] faces)
{
    public Recipe Recipe => recipe;
    public Face[] Faces => faces;

    /// <summary>True where a copy was held against a block of the design; in larger units it is a tile from then on.</summary>
    public bool IsBlock => recipe.Shows is not null and not Recipe.WholeTop;
}

/// <summary>A visible piece of cloth, convex, in the coordinates of the cloth that it belongs to, seen from the right side.</summary>
/// <param name="Frame">From the part's own coordinates (the piece as taken, the unit as made) to the cloth's.</param>
internal sealed record Face(Shape Shape, Part Part, Motion Frame)
{
    public Face Moved(Motion motion) => new(Shape.Moved(motion), Part, Rigid.Compose(Frame, motion));

    public Face? Within(HalfPlane half)
    {
        var rest = Shape.Within(half);
        return rest is null ? null : ReferenceEquals(rest, Shape) ? this : this with { Shape = rest };
    }
}
