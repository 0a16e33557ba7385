using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>What lies in a cell of the setting, and how it is turned.</summary>
public static class Cells
{
    /// <summary>The cell of the quilt at a row and column from 0, counted from the upper left.</summary>
    public static Cell CellAt(this Setting setting, int row, int column)
    {
        var repeat = setting.Cells[row % setting.Cells.Length];
        return repeat[column % repeat.Length];
    }

    public static Block Block(this Quilt quilt, string id) => quilt.Blocks.First(block => block.Id == id);

    /// <summary>Finished width and height of what lies in a cell, as it lies.</summary>
    public static (Length Width, Length Height) CellSize(this Quilt quilt, int row, int column)
    {
        var cell = quilt.Setting.CellAt(row, column);
        var block = quilt.Block(cell.Block);
        return int.IsOddInteger(cell.Turns) ? (block.Height, block.Width) : (block.Width, block.Height);
    }

    /// <summary>
    /// The design that lies in a cell: the block's own id, or <c>star.mirror</c> for its mirror image. Cloth can't be
    /// turned over, so a mirrored block is sewn as a block of its own.
    /// </summary>
    public static string DesignId(this Cell cell) => BlockDesigns.IdOf(cell.Block, null, cell.Mirror);

    /// <summary>Turns a block of a size about itself; its lower left corner comes to lie at the origin again.</summary>
    public static Motion Turned(int turns, Length width, Length height)
    {
        var quarters = ((turns % 4) + 4) % 4;
        var shift = quarters switch
        {
            0 => Motion.Identity,
            1 => Motion.Shift(height, 0),
            2 => Motion.Shift(width, height),
            _ => Motion.Shift(0, width),
        };
        return Motion.QuarterTurns(quarters).Then(shift);
    }
}
