using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>Where a cell's element stands in the height of its row.</summary>
public enum VerticalPlace
{
    Top,
    Middle,
}

/// <summary>A cell: a fixed width in points, or (where null) an equal share of what the others leave.</summary>
public sealed record RowCell(double? Width, Element Content)
{
    /// <summary>The role of the cell; null where its content has its own.</summary>
    public Role? Role { get; init; }
    public VerticalPlace Vertical { get; init; }

    /// <summary>What stands in the cell where the row goes on overleaf and the cell itself is done; null for nothing.</summary>
    public Element? Continued { get; init; }
}

/// <summary>Cells side by side. Where one of them must be broken, the row is; the others are then empty below.</summary>
/// <param name="Gap">Between two cells, in points.</param>
public sealed record Row(ImmutableArray<RowCell> Cells, double Gap = 0) : Element
{
    /// <summary>The role of the whole row.</summary>
    public Role? Role { get; init; }

    public override Fit Lay(Space space)
    {
        var fixedWidth = Cells.Sum(cell => cell.Width ?? 0) + (Gap * (Cells.Length - 1));
        var shares = Math.Max(1, Cells.Count(cell => cell.Width is null));
        var share = (space.Width - fixedWidth) / shares;
        var fits = Cells.Select(cell => cell.Content.Lay(space with { Width = cell.Width ?? share })).ToImmutableArray();
        if (fits.OfType<Refused>().FirstOrDefault() is { } refused)
        {
            return refused;
        }

        var height = fits.Max(Height);
        var drawn = ImmutableArray.CreateBuilder<Node>();
        double x = 0;
        foreach (var (cell, fit) in Cells.Zip(fits))
        {
            var slack = cell.Vertical == VerticalPlace.Middle ? (height - Height(fit)) / 2 : 0;
            drawn.Add(Group.At(x, slack, Drawing(fit)) with { Role = cell.Role });
            x += (cell.Width ?? share) + Gap;
        }

        var row = new Group(drawn.ToImmutable()) { Role = Role };
        if (fits.All(fit => fit is Whole))
        {
            return new Whole(height, row);
        }

        var rest = Cells.Zip(fits, (cell, fit) => cell with { Content = fit is Part part ? part.Rest : cell.Continued ?? new Blank(0) });
        return new Part(height, row, this with { Cells = [.. rest] });
    }

    private static double Height(Fit fit) => fit is Whole whole ? whole.Height : ((Part)fit).Height;

    private static Node Drawing(Fit fit) => fit is Whole whole ? whole.Drawing : ((Part)fit).Drawing;
}
