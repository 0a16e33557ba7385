using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>An optimal basis of the strip master, and duals under which no strip is worth more than its height.</summary>
/// <param name="Basis">For each row the basic column; null where it is a surplus.</param>
/// <param name="SurplusOf">For each row the piece whose surplus is basic, or -1.</param>
/// <param name="Duals">One a piece, in 1/<paramref name="Scale"/> units.</param>
internal sealed record LinearSolution(ImmutableArray<Column?> Basis, ImmutableArray<int> SurplusOf, ImmutableArray<long> Duals, long Scale)
{
    /// <summary>What all pieces are worth, in 1/<see cref="Scale"/> units: no plan is shorter.</summary>
    public Int128 Worth(StripGrid grid) => grid.Worth(Duals.AsSpan());

    /// <summary>How much higher a strip is than its pieces are worth; never negative.</summary>
    public long ReducedCost(Column column)
    {
        var cost = column.Height * Scale;
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            cost -= Duals[column.Pieces[i]] * column.Copies[i];
        }

        return cost;
    }

    /// <summary>The basis as a matrix, by rows: one row a piece, one column a basic variable.</summary>
    public int[][] Matrix()
    {
        var matrix = Basis.Select(_ => new int[Basis.Length]).ToArray();
        for (var at = 0; at < Basis.Length; at++)
        {
            if (Basis[at] is not { } column)
            {
                matrix[SurplusOf[at]][at] = -1;
                continue;
            }

            for (var i = 0; i < column.Pieces.Length; i++)
            {
                matrix[column.Pieces[i]][at] = column.Copies[i];
            }
        }

        return matrix;
    }
}
