using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Blocks.Editing;

/// <summary>
/// What can be done to a block while it is drawn. Each edit gives a block that its patches fill exactly, or findings
/// and no block; points are in units of the block's grid from its lower left corner.
/// </summary>
public static class BlockEdits
{
    /// <summary>One patch over the whole of a square grid.</summary>
    public static BookBlock Empty(int divisions, ImmutableArray<Role> roles) =>
        new(
            "drawn",
            "Drawn block",
            BlockFamily.Picture,
            null,
            new(divisions, divisions),
            roles,
            [new("1", roles[0].Id, Polygon.Rectangle(0, 0, divisions, divisions).Corners, [])]
        );

    /// <summary>A seam between two points: every patch that it runs through becomes two.</summary>
    public static Checked<BookBlock> Seam(BookBlock block, Point from, Point to)
    {
        if (from == to)
        {
            return Refused("drawing.seam.point", from);
        }

        var patches = ImmutableArray.CreateBuilder<BlockPatch>();
        foreach (var patch in block.Patches)
        {
            var parts = PolygonSplit.Along(Shape(patch), new(from, to), out var stuck);
            if (stuck is { } end)
            {
                return Refused("drawing.seam.inside", end);
            }

            if (parts.Length > 1 && patch.Arcs.Length > 0)
            {
                return Refused("drawing.curved", from);
            }

            patches.AddRange(parts.Length == 1 ? [patch] : parts.Select(part => patch with { Corners = part.Corners }));
        }

        return patches.Count == block.Patches.Length ? Refused("drawing.seam.nothing", from) : Kept(block with { Patches = patches.ToImmutable() });
    }

    /// <summary>Takes a corner elsewhere, in all patches that meet there.</summary>
    public static Checked<BookBlock> MovePoint(BookBlock block, Point from, Point to)
    {
        if (block.Patches.Any(p => p.Arcs.Length > 0 && p.Corners.Contains(from)))
        {
            return Refused("drawing.curved", from);
        }

        return block.Patches.Any(p => p.Corners.Contains(from))
            ? Kept(block with { Patches = [.. block.Patches.Select(p => p.Arcs.IsEmpty ? p with { Corners = Moved(Shape(p), from, to) } : p)] })
            : Refused("drawing.move.nothing", from);
    }

    public static Checked<BookBlock> Recolor(BookBlock block, int patch, string role) =>
        Kept(block with { Patches = block.Patches.SetItem(patch, block.Patches[patch] with { Role = role }) });

    /// <summary>Takes out the seam between two patches; the first one's role stays.</summary>
    public static Checked<BookBlock> Join(BookBlock block, int one, int other)
    {
        BlockPatch first = block.Patches[one],
            second = block.Patches[other];
        if (first.Arcs.Length + second.Arcs.Length > 0)
        {
            return Refused("drawing.curved", first.Corners[0]);
        }

        return one != other && PolygonJoin.Of(Shape(first), Shape(second)) is { } joined
            ? Kept(block with { Patches = [.. block.Patches.SetItem(one, first with { Corners = joined.Corners }).Where((_, i) => i != other)] })
            : Refused("drawing.join.apart", first.Corners[0]);
    }

    /// <summary>The whole block turned counterclockwise by quarters, mirrored left to right first.</summary>
    public static Checked<BookBlock> Turn(BookBlock block, int turns, bool mirror)
    {
        var motion = (mirror ? new Motion(-1, 0, 0, 1, block.Grid.Columns, 0) : Motion.Identity).Then(
            Cells.Turned(turns, Length.Inches(block.Grid.Columns), Length.Inches(block.Grid.Rows))
        );
        var grid = int.IsOddInteger(turns) ? new Grid(block.Grid.Rows, block.Grid.Columns) : block.Grid;
        return Kept(block with { Grid = grid, Patches = [.. block.Patches.Select(p => Moved(p, motion))] });
    }

    /// <summary>The same drawing on a grid of other divisions: one unit becomes smaller or larger.</summary>
    public static Checked<BookBlock> Regrid(BookBlock block, int divisions)
    {
        var ratio = new Rational(divisions, block.Grid.Columns);
        var rows = ratio * block.Grid.Rows;
        return rows.IsInteger && divisions is >= 1 and <= 64
            ? Kept(block with { Grid = new(divisions, (int)rows.Numerator), Patches = [.. block.Patches.Select(p => Scaled(p, ratio))] })
            : Refused("drawing.grid", Point.Origin);
    }

    /// <summary>
    /// Copies what lies in a rectangle to another place, turned or mirrored about the rectangle's middle; patches that
    /// reach into the new place are cut off at its sides.
    /// </summary>
    /// <param name="to">The lower left corner of the new place; a part that is turned by a quarter keeps its own size.</param>
    public static Checked<BookBlock> Copy(BookBlock block, Point low, Point high, Point to, int turns, bool mirror)
    {
        Surd width = high.X - low.X,
            height = high.Y - low.Y;
        if (width.Sign <= 0 || height.Sign <= 0 || (int.IsOddInteger(turns) && width != height))
        {
            return Refused("drawing.copy.part", low);
        }

        if (block.Patches.Any(p => p.Arcs.Length > 0))
        {
            return Refused("drawing.curved", low);
        }

        var motion = Motion
            .Shift(-(low.X + high.X) / 2, -(low.Y + high.Y) / 2)
            .Then(mirror ? new Motion(-1, 0, 0, 1, 0, 0) : Motion.Identity)
            .Then(Motion.QuarterTurns(turns))
            .Then(Motion.Shift(to.X + (width / 2), to.Y + (height / 2)));
        var source = Polygon.Rectangle(low.X, low.Y, high.X, high.Y);
        var target = Polygon.Rectangle(to.X, to.Y, to.X + width, to.Y + height);
        return Kept(
            block with
            {
                Patches =
                [
                    .. block.Patches.SelectMany(p => Parts(p, target).Where(part => !Holds(target, part)).Select(part => p with { Corners = part.Corners })),
                    .. block.Patches.SelectMany(p => Parts(p, source).Where(part => Holds(source, part)).Select(part => p with { Corners = part.Moved(motion).Corners })),
                ],
            }
        );
    }

    /// <summary>A block from a file, taken over as it stands.</summary>
    public static Checked<BookBlock> Paste(string file) => BlockFile.Read(file);

    internal static Polygon Shape(BlockPatch patch) => new Polygon(patch.Corners).CounterClockwise();

    // A patch in pieces, each inside the rectangle or outside; whole where it does not reach in.
    private static IEnumerable<Polygon> Parts(BlockPatch patch, Polygon rectangle)
    {
        IEnumerable<Polygon> parts = [Shape(patch)];
        for (var i = 0; i < 4; i++)
        {
            var side = new Line(rectangle.Corners[i], rectangle.Corners[(i + 1) % 4]);
            parts = parts.SelectMany(part => Overlap(part, rectangle) ? PolygonSplit.Across(part, side) : [part]).ToList();
        }

        return parts;
    }

    private static bool Overlap(Polygon part, Polygon rectangle)
    {
        var ((low, high), (from, to)) = (part.Bounds(), rectangle.Bounds());
        return low.X < to.X && from.X < high.X && low.Y < to.Y && from.Y < high.Y;
    }

    private static bool Holds(Polygon rectangle, Polygon part) => part.Corners.All(c => rectangle.Where(c) != Side.Outside);

    private static ImmutableArray<Point> Moved(Polygon shape, Point from, Point to)
    {
        var corners = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point corner = shape.Corners[i],
                next = shape.Corners[(i + 1) % shape.Corners.Length];
            corners.Add(corner == from ? to : corner);
            // A corner of others on this side becomes a corner of this patch too.
            if (corner != from && next != from && new Polygon([corner, next, from]).TwiceSignedArea.IsZero && Point.Dot(corner - from, next - from).Sign < 0)
            {
                corners.Add(to);
            }
        }

        return PolygonSplit.Cleaned(new(corners.ToImmutable())).Corners;
    }

    private static BlockPatch Moved(BlockPatch patch, Motion motion) =>
        patch with
        {
            Corners = [.. patch.Corners.Select(motion.Apply)],
            Arcs = [.. patch.Arcs.Select(arc => arc with { Center = motion.Apply(arc.Center), Clockwise = arc.Clockwise ^ motion.Mirrors })],
        };

    private static BlockPatch Scaled(BlockPatch patch, Rational ratio) =>
        patch with
        {
            Corners = [.. patch.Corners.Select(c => c * ratio)],
            Arcs = [.. patch.Arcs.Select(arc => arc with { Center = arc.Center * ratio })],
        };

    // All rules of a block file hold, or there is no block: the exact partition above all.
    private static Checked<BookBlock> Kept(BookBlock block)
    {
        var numbered = block with { Patches = [.. block.Patches.Select((patch, i) => patch with { Id = $"{i + 1}" })] };
        if (numbered.Patches.Any(patch => patch.Corners.Length < (patch.Arcs.IsEmpty ? 3 : 2)))
        {
            return Refused("drawing.flat", numbered.Patches.First(p => p.Corners.Length < 3).Corners.FirstOrDefault());
        }

        return BlockFile.Read(BlockFile.Write(numbered));
    }

    private static Checked<BookBlock> Refused(string rule, Point at) => Checked<BookBlock>.Failed(Finding.Of(rule, PlaceOf(at), ("at", PlaceOf(at))));

    private static string PlaceOf(Point at) => $"({SurdText.Format(at.X)}, {SurdText.Format(at.Y)})";
}
