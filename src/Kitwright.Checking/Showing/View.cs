using Kitwright.Checking.Exact;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>What an assembly shows, ready to be held against patches and blocks of a design.</summary>
internal sealed class View
{
    private readonly Boxes<Leaf> boxes;
    private readonly Dictionary<Leaf, View> inside = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(PathId Unit, string Block, Motion Relative), bool> alike = [];
    private readonly Effort effort;

    public View(IReadOnlyList<Leaf> leaves, Effort effort)
    {
        this.effort = effort;
        boxes = new(leaves.Select(l => (l, l.Shape)));
    }

    /// <summary>The pieces that show in a shape, and their area in it (twice).</summary>
    public IEnumerable<(Leaf Piece, Surd TwiceArea)> In(Shape shape)
    {
        foreach (var leaf in boxes.Near(shape))
        {
            effort.Spend(shape.Count);
            if (shape.Within(leaf.Shape) is not { } part)
            {
                continue;
            }

            if (leaf.Block is null)
            {
                yield return (leaf, part.TwiceArea);
                continue;
            }

            if (!inside.TryGetValue(leaf, out var block))
            {
                inside[leaf] = block = new(Leaves.Inside(leaf, effort), effort);
            }

            foreach (var inner in block.In(part))
            {
                yield return inner;
            }
        }
    }

    /// <summary>
    /// Whether a patch is covered wholly by its role. Faces do not overlap, so equal area is equal cover.
    /// </summary>
    public bool Covers(Shape shape, string role) => AreaOf(shape, role) == shape.TwiceArea;

    public Surd AreaOf(Shape shape, string role)
    {
        var area = Surd.Zero;
        foreach (var (piece, part) in In(shape))
        {
            if (piece.Role == role)
            {
                area += part;
            }
        }

        return area;
    }

    /// <summary>
    /// Whether a block lies where the design places it: the same block in the same way, or one that looks the same
    /// there, as a block does that has a symmetry.
    /// </summary>
    public bool Shows(Placement placement, BlockDesign block)
    {
        var place = Rectangle(block).Moved(placement.Motion);
        var near = boxes.Near(place).Where(l => place.Within(l.Shape) is not null).ToArray();
        if (near is [{ Block: { } unit } only] && place.Within(only.Shape)!.TwiceArea == place.TwiceArea)
        {
            var relative = Rigid.Compose(only.Frame, Rigid.Undo(placement.Motion));
            if (unit.Recipe.Shows == block.Id && Rigid.IsStill(relative))
            {
                return true;
            }

            var key = (unit.Recipe.Id, block.Id, relative);
            if (!alike.TryGetValue(key, out var known))
            {
                alike[key] = known = Looks(block, placement.Motion);
            }

            return known;
        }

        return Looks(block, placement.Motion);
    }

    private bool Looks(BlockDesign block, Motion motion) =>
        block.Patches.All(p => Covers(new Shape([.. p.Shape.Corners]).Moved(motion), p.Role));

    public static Shape Rectangle(BlockDesign block) => Shape.Rectangle(0, 0, block.Width, block.Height);
}
