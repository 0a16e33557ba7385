using System.Collections.Immutable;
using System.Numerics;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Whole vectors modulo the whole combinations of a matrix' columns: a finite Abelian group, whose elements are numbered
/// from 0, the class of the zero vector.
/// </summary>
/// <remarks>
/// By the Smith normal form (H. J. S. Smith, Philosophical Transactions 151, 1861): unimodular row and column steps make
/// the matrix diagonal, and the class of a vector is what its transformed entries leave when divided by the diagonal.
/// </remarks>
internal sealed class FiniteGroup
{
    private readonly ImmutableArray<int> moduli;
    private readonly ImmutableArray<ImmutableArray<long>> rows;

    private FiniteGroup(ImmutableArray<int> moduli, ImmutableArray<ImmutableArray<long>> rows)
    {
        (this.moduli, this.rows) = (moduli, rows);
        Order = moduli.Aggregate(1, (product, modulus) => product * modulus);
    }

    /// <summary>Whether numbers of classes are added like hours on a dial.</summary>
    public bool IsCyclic => moduli.Length <= 1;

    /// <summary>How many elements there are: the determinant's size.</summary>
    public int Order { get; }

    /// <summary>Null where the matrix is singular or the group larger than asked.</summary>
    /// <param name="matrix">Square, by rows.</param>
    public static FiniteGroup? Of(int[][] matrix, int largest)
    {
        var size = matrix.Length;
        var left = matrix.Select(row => row.Select(entry => (BigInteger)entry).ToArray()).ToArray();
        var steps = Enumerable.Range(0, size).Select(i => Enumerable.Range(0, size).Select(j => (BigInteger)(i == j ? 1 : 0)).ToArray()).ToArray();
        var order = BigInteger.One;
        for (var k = 0; k < size; k++)
        {
            if (!Clear(left, steps, k))
            {
                return null;
            }

            order *= BigInteger.Abs(left[k][k]);
            if (order > largest)
            {
                return null;
            }
        }

        var kept = Enumerable.Range(0, size).Where(k => !BigInteger.Abs(left[k][k]).IsOne).ToArray();
        ImmutableArray<int> moduli = [.. kept.Select(k => (int)BigInteger.Abs(left[k][k]))];
        return new(moduli, [.. kept.Select((k, i) => steps[k].Select(entry => Residue(entry, moduli[i])).ToImmutableArray())]);
    }

    /// <summary>The number of a vector's class.</summary>
    public int ClassOf(ReadOnlySpan<int> vector)
    {
        var number = 0;
        for (var k = 0; k < moduli.Length; k++)
        {
            var sum = 0L;
            for (var i = 0; i < vector.Length; i++)
            {
                sum = (sum + (rows[k][i] * vector[i])) % moduli[k];
            }

            number = (number * moduli[k]) + (int)(sum < 0 ? sum + moduli[k] : sum);
        }

        return number;
    }

    public int Add(int x, int y)
    {
        if (IsCyclic)
        {
            var one = x + y;
            return one >= Order ? one - Order : one;
        }

        var (sum, place) = (0, 1);
        for (var k = moduli.Length - 1; k >= 0; k--)
        {
            sum += ((x % moduli[k]) + (y % moduli[k])) % moduli[k] * place;
            (x, y, place) = (x / moduli[k], y / moduli[k], place * moduli[k]);
        }

        return sum;
    }

    /// <summary>How many numbers make up a class.</summary>
    public int Places => moduli.Length;

    /// <summary>A class as one number for each modulus.</summary>
    public void Split(int x, Span<int> places)
    {
        for (var k = moduli.Length - 1; k >= 0; k--)
        {
            (places[k], x) = (x % moduli[k], x / moduli[k]);
        }
    }

    /// <summary>The sum of two classes that are split: without a division.</summary>
    public int Add(ReadOnlySpan<int> x, ReadOnlySpan<int> y)
    {
        var number = 0;
        for (var k = 0; k < x.Length; k++)
        {
            var sum = x[k] + y[k];
            number = (number * moduli[k]) + (sum >= moduli[k] ? sum - moduli[k] : sum);
        }

        return number;
    }

    public int Negative(int x)
    {
        var (negative, place) = (0, 1);
        for (var k = moduli.Length - 1; k >= 0; k--)
        {
            negative += (moduli[k] - (x % moduli[k])) % moduli[k] * place;
            (x, place) = (x / moduli[k], place * moduli[k]);
        }

        return negative;
    }

    /// <summary>Makes row and column k zero beside the diagonal; false where nothing is left to put there.</summary>
    private static bool Clear(BigInteger[][] left, BigInteger[][] steps, int k)
    {
        var size = left.Length;
        while (true)
        {
            if (Least(left, k) is not var (row, column))
            {
                return false;
            }

            (left[k], left[row]) = (left[row], left[k]);
            (steps[k], steps[row]) = (steps[row], steps[k]);
            foreach (var entries in left)
            {
                (entries[k], entries[column]) = (entries[column], entries[k]);
            }

            for (var i = k + 1; i < size; i++)
            {
                var times = left[i][k] / left[k][k];
                if (!times.IsZero)
                {
                    Subtract(left[i], left[k], times);
                    Subtract(steps[i], steps[k], times);
                }
            }

            for (var j = k + 1; j < size; j++)
            {
                var times = left[k][j] / left[k][k];
                if (!times.IsZero)
                {
                    foreach (var entries in left)
                    {
                        entries[j] -= times * entries[k];
                    }
                }
            }

            if (Enumerable.Range(k + 1, size - k - 1).Any(i => !left[i][k].IsZero || !left[k][i].IsZero))
            {
                continue;
            }

            // Each number of the diagonal divides those that follow, so that most groups have one modulus only.
            var uneven = Enumerable.Range(k + 1, size - k - 1).FirstOrDefault(i => left[i].Skip(k + 1).Any(entry => !(entry % left[k][k]).IsZero), -1);
            if (uneven < 0)
            {
                return true;
            }

            Subtract(left[k], left[uneven], BigInteger.MinusOne);
            Subtract(steps[k], steps[uneven], BigInteger.MinusOne);
        }
    }

    private static (int Row, int Column)? Least(BigInteger[][] left, int from)
    {
        (int, int)? least = null;
        var smallest = BigInteger.Zero;
        for (var i = from; i < left.Length; i++)
        {
            for (var j = from; j < left.Length; j++)
            {
                var entry = BigInteger.Abs(left[i][j]);
                if (!entry.IsZero && (least is null || entry < smallest))
                {
                    (least, smallest) = ((i, j), entry);
                }
            }
        }

        return least;
    }

    private static void Subtract(BigInteger[] row, BigInteger[] other, BigInteger times)
    {
        for (var i = 0; i < row.Length; i++)
        {
            row[i] -= times * other[i];
        }
    }

    private static long Residue(BigInteger entry, int modulus)
    {
        var rest = (long)(entry % modulus);
        return rest < 0 ? rest + modulus : rest;
    }
}
