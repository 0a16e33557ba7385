using Kitwright.Checking.Exact;

namespace Kitwright.Checking.Showing;

/// <summary>
/// Leaves by the cells of a grid, to find those near a shape. Boxes in doubles are a little too large, never too small,
/// so nothing is missed; what is found is decided exactly by the caller.
/// </summary>
internal sealed class Boxes
{
    private const int CellsPerSide = 128;

    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly IReadOnlyList<Leaf> leaves;
    private readonly double left,
        bottom,
        cellWidth,
        cellHeight;
    private readonly int cellsAcross;

    public Boxes(IReadOnlyList<Leaf> leaves)
    {
        this.leaves = leaves;
        if (leaves.Count == 0)
        {
            return;
        }

        left = leaves.Min(l => l.Shape.Left);
        bottom = leaves.Min(l => l.Shape.Bottom);
        cellsAcross = Math.Clamp((int)Math.Sqrt(leaves.Count), 1, CellsPerSide);
        cellWidth = Math.Max(leaves.Max(l => l.Shape.Right) - left, double.Epsilon) / cellsAcross;
        cellHeight = Math.Max(leaves.Max(l => l.Shape.Top) - bottom, double.Epsilon) / cellsAcross;
        for (var i = 0; i < leaves.Count; i++)
        {
            foreach (var cell in CellsOf(leaves[i].Shape))
            {
                if (!cells.TryGetValue(cell, out var list))
                {
                    cells[cell] = list = [];
                }

                list.Add(i);
            }
        }
    }

    public IEnumerable<Leaf> Near(Shape shape)
    {
        if (leaves.Count == 0)
        {
            return [];
        }

        var near = new SortedSet<int>();
        foreach (var cell in CellsOf(shape))
        {
            if (cells.TryGetValue(cell, out var list))
            {
                near.UnionWith(list);
            }
        }

        return near.Select(i => leaves[i]).Where(l => !l.Shape.IsApartFrom(shape));
    }

    private IEnumerable<(int, int)> CellsOf(Shape shape)
    {
        int fromX = Cell(shape.Left - left, cellWidth),
            toX = Cell(shape.Right - left, cellWidth),
            fromY = Cell(shape.Bottom - bottom, cellHeight),
            toY = Cell(shape.Top - bottom, cellHeight);
        for (var x = fromX; x <= toX; x++)
        {
            for (var y = fromY; y <= toY; y++)
            {
                yield return (x, y);
            }
        }
    }

    private int Cell(double reach, double size) => (int)Math.Clamp(reach / size, 0, cellsAcross - 1);
}
