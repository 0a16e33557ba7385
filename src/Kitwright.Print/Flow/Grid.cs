using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>A table: the head is repeated on each page, rows are kept whole, a rule stands under each.</summary>
/// <param name="Widths">In points; null for an equal share of what is left.</param>
public sealed record Grid(
    ImmutableArray<double?> Widths,
    ImmutableArray<Element> Head,
    ImmutableArray<ImmutableArray<Element>> Rows,
    Stroke Rule
) : Element
{
    private const double ColumnGap = 12;
    private const double RowPadding = 4;

    public override Fit Lay(Space space)
    {
        var drawn = ImmutableArray.CreateBuilder<Node>();
        double y = 0;
        var head = RowOf(Head, Role.HeaderCell, space);
        if (head is not Whole headRow || !space.Holds(headRow.Height))
        {
            return new Refused("the head of a table", 0, space.Height);
        }

        Add(drawn, headRow, ref y, space.Width);
        for (var i = 0; i < Rows.Length; i++)
        {
            if (RowOf(Rows[i], Role.Cell, space.Less(y + (2 * RowPadding))) is Whole row)
            {
                Add(drawn, row, ref y, space.Width);
                continue;
            }

            return i == 0
                ? new Refused("the first row of a table", y, space.Height)
                : new Part(y, Table(drawn), this with { Rows = Rows[i..] });
        }

        return new Whole(y, Table(drawn));
    }

    private Fit RowOf(ImmutableArray<Element> cells, Role role, Space space) =>
        new Row([.. Widths.Zip(cells, (width, cell) => new RowCell(width, cell) { Role = role, Vertical = VerticalPlace.Middle })], ColumnGap)
        {
            Role = Role.TableRow,
        }.Lay(space);

    private void Add(ImmutableArray<Node>.Builder drawn, Whole row, ref double y, double width)
    {
        drawn.Add(Group.At(0, y + RowPadding, row.Drawing));
        y += row.Height + (2 * RowPadding);
        drawn.Add(new Shape(Outline.Line(new(0, y), new(width, y)), null, Rule) { Role = Role.Decoration });
    }

    private static Group Table(ImmutableArray<Node>.Builder drawn) => new(drawn.ToImmutable()) { Role = Role.Table };
}
