namespace Kitwright.Optimise.Cutting;

/// <summary>The columns of a linear program, each by its entries that are not zero, one behind the other in memory.</summary>
internal sealed class SparseColumns
{
    private readonly List<int> ends = [];
    private int[] rows = new int[1024];
    private double[] entries = new double[1024];

    public int Count => ends.Count;

    public void Add(ReadOnlySpan<int> at, ReadOnlySpan<double> coefficients)
    {
        var from = Count == 0 ? 0 : ends[^1];
        while (from + at.Length > entries.Length)
        {
            Array.Resize(ref entries, 2 * entries.Length);
            Array.Resize(ref rows, 2 * rows.Length);
        }

        at.CopyTo(rows.AsSpan(from));
        coefficients.CopyTo(entries.AsSpan(from));
        ends.Add(from + at.Length);
    }

    public ReadOnlySpan<int> Rows(int column) => rows.AsSpan(From(column), ends[column] - From(column));

    public ReadOnlySpan<double> Entries(int column) => entries.AsSpan(From(column), ends[column] - From(column));

    public double Dot(int column, double[] vector)
    {
        unchecked
        {
            var from = From(column);
            var coefficients = entries.AsSpan(from, ends[column] - from);
            var at = rows.AsSpan(from, coefficients.Length);
            var sum = 0.0;
            for (var i = 0; i < coefficients.Length; i++)
            {
                sum += coefficients[i] * vector[at[i]];
            }

            return sum;
        }
    }

    /// <summary>Whether no entry of the column is above the limit of its row.</summary>
    public bool IsWithin(int column, ReadOnlySpan<int> limits)
    {
        for (var i = From(column); i < ends[column]; i++)
        {
            if (entries[i] > limits[rows[i]])
            {
                return false;
            }
        }

        return true;
    }

    private int From(int column) => column == 0 ? 0 : ends[column - 1];
}
