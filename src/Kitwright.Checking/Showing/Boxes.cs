using Kitwright.Checking.Exact;

namespace Kitwright.Checking.Showing;

/// <summary>
/// Things with a shape by the cells of a grid, to find those near another shape. Boxes in doubles are a little too
/// large, never too small, so nothing is missed; what is found is decided exactly by the caller.
/// </summary>
internal sealed class Boxes<T>
{
    private const int CellsPerSide = 128;

    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly (T Item, Shape Shape)[] items;
    private readonly double left,
        bottom,
        cellWidth,
        cellHeight;
    private readonly int cellsAcross;

    public Boxes(IEnumerable<(T Item, Shape Shape)> things)
    {
        items = [.. things];
        if (items.Length == 0)
        {
            return;
        }

        left = items.Min(l => l.Shape.Left);
        bottom = items.Min(l => l.Shape.Bottom);
        cellsAcross = Math.Clamp((int)Math.Sqrt(items.Length), 1, CellsPerSide);
        cellWidth = Math.Max(items.Max(l => l.Shape.Right) - left, double.Epsilon) / cellsAcross;
        cellHeight = Math.Max(items.Max(l => l.Shape.Top) - bottom, double.Epsilon) / cellsAcross;
        for (var i = 0; i < items.Length; i++)
        {
            foreach (var cell in CellsOf(items[i].Shape))
            {
                if (!cells.TryGetValue(cell, out var list))
                {
                    cells[cell] = list = [];
                }

                list.Add(i);
            }
        }
    }

    public IEnumerable<T> Near(Shape shape)
    {
        if (items.Length == 0)
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

        return near.Where(i => !items[i].Shape.IsApartFrom(shape)).Select(i => items[i].Item);
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
