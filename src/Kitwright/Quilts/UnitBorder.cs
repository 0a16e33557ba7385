using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>Lays a border that is pieced from units round a rectangle: coping strips, runs, corners.</summary>
/// <remarks>
/// Unit <c>border/N/top/I</c> counts from the left, and on as the top would be turned about the center: up the left
/// side, from right to left below, down the right side. Coping strips are <c>frame/border/N/coping/left</c> and so on.
/// </remarks>
internal sealed class UnitBorder(Quilt quilt, int number, Frame inner)
{
    private static readonly string[] Sides = ["top", "left", "bottom", "right"];
    private static readonly string[] Corners = ["top-left", "bottom-left", "bottom-right", "top-right"];

    private readonly Border border = quilt.Borders[number - 1];
    private readonly ImmutableArray<Placement>.Builder placements = ImmutableArray.CreateBuilder<Placement>();
    private readonly Dictionary<string, BlockDesign> designs = [];

    public sealed record Laid(Frame Outer, ImmutableArray<Placement> Placements, ImmutableArray<Patch> Patches, IEnumerable<BlockDesign> Blocks);

    /// <summary>A fault of the border throws: <see cref="BorderRules"/> finds it first.</summary>
    public Laid Lay()
    {
        var units = border.Units!;
        var block = quilt.Block(units.Block);
        var fit = UnitFit.Of(border, block, inner.Width, inner.Height) ?? throw new InvalidOperationException("The units of a border do not come out.");
        var coped = new Frame(inner.Left - fit.CopingAcross, inner.Bottom - fit.CopingDown, inner.Right + fit.CopingAcross, inner.Top + fit.CopingDown);
        var outer = coped.Grown(border.Width);
        for (var side = 0; side < Sides.Length; side++)
        {
            AddRun(side, fit, block, coped);
        }

        if (border.Style == BorderStyle.CornerSquares && units.Corner is { } corner)
        {
            AddCorners(quilt.Block(corner), coped, outer);
        }

        return new(outer, placements.ToImmutable(), [.. Coping(coped), .. CornerSquares(coped, outer)], designs.Values);
    }

    private void AddRun(int side, UnitFit fit, Block block, Frame coped)
    {
        var units = border.Units!;
        var upright = int.IsOddInteger(side);
        var count = upright ? fit.Down : fit.Across;
        var reach = !upright && border.Style == BorderStyle.Butted ? border.Width : Length.Zero;
        for (var i = 0; i < count; i++)
        {
            var mirror = units.FromMiddle && (2 * i) + 1 > count;
            // Mirrored along its run: the flip comes before the turn, which then goes the other way.
            var turns = (mirror ? -units.Turns : units.Turns) + side;
            var at = side switch
            {
                0 => (X: coped.Left - reach + (fit.Unit * i), Y: coped.Top),
                1 => (X: coped.Left - border.Width, Y: coped.Bottom + (fit.Unit * i)),
                2 => (X: coped.Right + reach - (fit.Unit * (i + 1)), Y: coped.Bottom - border.Width),
                _ => (X: coped.Right, Y: coped.Top - (fit.Unit * (i + 1))),
            };
            // Of a run that is mirrored the second half is counted from its end.
            var isSecond = int.IsOddInteger(mirror ? count - 1 - i : i);
            var unit = isSecond && units.Alternate is { } alternate ? quilt.Block(alternate) : block;
            Place($"border/{number}/{Sides[side]}/{i + 1}", Scaled(unit, int.IsOddInteger(units.Turns), mirror), turns, at.X, at.Y);
        }
    }

    private void AddCorners(Block block, Frame coped, Frame outer)
    {
        (Length X, Length Y)[] at = [(outer.Left, coped.Top), (outer.Left, outer.Bottom), (coped.Right, outer.Bottom), (coped.Right, coped.Top)];
        for (var i = 0; i < Corners.Length; i++)
        {
            Place($"border/{number}/corner/{Corners[i]}", Scaled(block, false, false), i, at[i].X, at[i].Y);
        }
    }

    private void Place(string id, BlockDesign design, int turns, Length x, Length y) =>
        placements.Add(new(new(id), design.Id, Cells.Turned(turns, design.Width, design.Height).Then(Motion.Shift(x, y))));

    private BlockDesign Scaled(Block block, bool turned, bool mirror)
    {
        var ratio = border.Width / (turned ? block.Width : block.Height);
        var id = BlockDesigns.IdOf(block.Id, ratio == Rational.One ? null : number, mirror);
        if (!designs.TryGetValue(id, out var design))
        {
            designs.Add(id, design = BlockDesigns.Draw(BlockDesigns.Scaled(block, ratio), id, mirror));
        }

        return design;
    }

    private IEnumerable<Patch> Coping(Frame coped) =>
        from strip in new[]
        {
            Coping("left", new(coped.Left, inner.Bottom, inner.Left, inner.Top)),
            Coping("right", new(inner.Right, inner.Bottom, coped.Right, inner.Top)),
            Coping("top", new(coped.Left, inner.Top, coped.Right, coped.Top)),
            Coping("bottom", new(coped.Left, coped.Bottom, coped.Right, inner.Bottom)),
        }
        where strip is not null
        select strip;

    private Patch? Coping(string side, Frame frame) =>
        frame.Width.Sign > 0 && frame.Height.Sign > 0 ? new(new($"frame/border/{number}/coping/{side}"), border.Role, frame.Polygon()) : null;

    private IEnumerable<Patch> CornerSquares(Frame coped, Frame outer) =>
        border.Corner is null ? [] : BorderRing.Corners(border.Corner, number, coped, outer);
}
