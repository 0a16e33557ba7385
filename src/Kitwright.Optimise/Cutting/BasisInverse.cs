using System.Numerics;

namespace Kitwright.Optimise.Cutting;

/// <summary>The inverse of a simplex basis, held whole, by columns; kept up pivot by pivot and computed anew at times.</summary>
/// <remarks>Explicit, because these bases have one row a kind of piece: tens, seldom more than a hundred.</remarks>
internal sealed class BasisInverse(int size)
{
    private const double Singular = 1e-8;

    private readonly double[][] columns = [.. Enumerable.Range(0, size).Select(_ => new double[size])];

    /// <summary>Numbers gone through so far: most entries of a large basis are zero, and passed over.</summary>
    public long Touched { get; private set; }

    /// <summary>Pivots since the inverse was last computed anew; rounding errors grow with it.</summary>
    public int Age { get; private set; }

    public double[] Column(int index) => columns[index];

    /// <summary>The inverse of a diagonal matrix with entries 1 or -1, which is the matrix itself.</summary>
    public void SetDiagonal(ReadOnlySpan<double> diagonal)
    {
        for (var i = 0; i < size; i++)
        {
            Array.Clear(columns[i]);
            columns[i][i] = diagonal[i];
        }

        Age = 0;
    }

    /// <summary>The product with a column of the program: the direction in which basic values go when it enters.</summary>
    public void Times(SparseColumns program, int column, double[] result)
    {
        Array.Clear(result);
        var rows = program.Rows(column);
        var entries = program.Entries(column);
        for (var i = 0; i < rows.Length; i++)
        {
            AddScaled(result, columns[rows[i]], entries[i]);
        }
    }

    public void Times(double[] vector, double[] result)
    {
        Array.Clear(result);
        for (var i = 0; i < size; i++)
        {
            if (vector[i] != 0)
            {
                AddScaled(result, columns[i], vector[i]);
            }
        }
    }

    public void CopyRow(int row, double[] result)
    {
        for (var i = 0; i < size; i++)
        {
            result[i] = columns[i][row];
        }
    }

    /// <summary>The entering column, whose direction this is, takes the place of basis row <paramref name="leaving"/>.</summary>
    public void Pivot(double[] direction, int leaving)
    {
        var pivot = direction[leaving];
        foreach (var column in columns)
        {
            if (column[leaving] != 0)
            {
                var factor = column[leaving] / pivot;
                AddScaled(column, direction, -factor);
                column[leaving] = factor;
                Touched += size;
            }
        }

        Age++;
    }

    /// <summary>Inverts anew (Gauss and Jordan, partial pivoting); false where the basis is singular.</summary>
    public bool Compute(SparseColumns program, int[] basis)
    {
        var matrix = WithIdentity(program, basis);
        for (var k = 0; k < size; k++)
        {
            var pivot = k;
            for (var row = k + 1; row < size; row++)
            {
                pivot = Math.Abs(matrix[row][k]) > Math.Abs(matrix[pivot][k]) ? row : pivot;
            }

            (matrix[k], matrix[pivot]) = (matrix[pivot], matrix[k]);
            var divisor = matrix[k][k];
            if (Math.Abs(divisor) < Singular)
            {
                return false;
            }

            for (var i = 0; i < 2 * size; i++)
            {
                matrix[k][i] /= divisor;
            }

            Touched += 2 * size;

            for (var row = 0; row < size; row++)
            {
                if (row != k && matrix[row][k] != 0)
                {
                    AddScaled(matrix[row], matrix[k], -matrix[row][k]);
                    Touched += 2 * size;
                }
            }
        }

        for (var column = 0; column < size; column++)
        {
            for (var row = 0; row < size; row++)
            {
                columns[column][row] = matrix[row][size + column];
            }
        }

        Age = 0;
        return true;
    }

    private double[][] WithIdentity(SparseColumns program, int[] basis)
    {
        var matrix = Enumerable.Range(0, size).Select(_ => new double[2 * size]).ToArray();
        for (var k = 0; k < size; k++)
        {
            matrix[k][size + k] = 1;
            var rows = program.Rows(basis[k]);
            for (var i = 0; i < rows.Length; i++)
            {
                matrix[rows[i]][k] = program.Entries(basis[k])[i];
            }
        }

        return matrix;
    }

    public static void AddScaled(double[] target, double[] source, double factor)
    {
        var to = target.AsSpan();
        var from = source.AsSpan(0, target.Length);
        var scale = new Vector<double>(factor);
        var i = 0;
        for (; i <= to.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            (new Vector<double>(to[i..]) + (scale * new Vector<double>(from[i..]))).CopyTo(to[i..]);
        }

        for (; i < to.Length; i++)
        {
            to[i] += factor * from[i];
        }
    }
}
