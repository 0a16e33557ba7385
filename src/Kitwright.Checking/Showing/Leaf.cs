using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>A face with the units between it and the eye taken away: cloth of one piece, or one whole block.</summary>
/// <param name="Piece">The piece, with the recipe that takes it; null for a block.</param>
/// <param name="Block">A verified block; null for a piece.</param>
/// <param name="Frame">From block coordinates to where it is looked at; of use for blocks only.</param>
internal sealed record Leaf(Shape Shape, TakenPiece? Piece, Unit? Block, Motion Frame)
{
    public string? Role => Piece?.Piece.Role;
}

/// <summary>Takes units apart into leaves.</summary>
internal static class Leaves
{
    /// <summary>Ten times what a large top shows.</summary>
    private const int Most = 100_000;

    /// <summary>What shows of an assembly inside a convex window.</summary>
    public static Leaf[] Of(IEnumerable<Face> faces, Shape window, Effort effort)
    {
        var leaves = new List<Leaf>();
        foreach (var face in faces)
        {
            Add(leaves, face, Rigid.Still, window, intoBlocks: false, effort);
        }

        return [.. leaves];
    }

    /// <summary>The pieces of a block that lies in a leaf.</summary>
    public static Leaf[] Inside(Leaf block, Effort effort)
    {
        var leaves = new List<Leaf>();
        foreach (var face in block.Block!.Faces)
        {
            Add(leaves, face, block.Frame, block.Shape, intoBlocks: true, effort);
        }

        return [.. leaves];
    }

    private static void Add(List<Leaf> leaves, Face face, Motion outer, Shape window, bool intoBlocks, Effort effort)
    {
        effort.Spend(1);
        if (face.Shape.Moved(outer).Within(window) is not { } shape)
        {
            return;
        }

        if (leaves.Count == Most)
        {
            throw new BeyondLimits();
        }

        var frame = Rigid.Compose(face.Frame, outer);
        switch (face.Part)
        {
            case TakenPiece piece:
                leaves.Add(new(shape, piece, null, frame));
                break;
            case UsedUnit { Unit: { IsBlock: true } block } when !intoBlocks:
                leaves.Add(new(shape, null, block, frame));
                break;
            case UsedUnit { Unit: var unit }:
                foreach (var inner in unit.Faces)
                {
                    Add(leaves, inner, frame, shape, intoBlocks, effort);
                }

                break;
        }
    }
}
