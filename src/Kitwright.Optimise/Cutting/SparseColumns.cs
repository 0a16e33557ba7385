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
        var sum = 0.0;
        for (var (i, end) = (From(column), ends[column]); i < end; i++)
        {
            sum += entries[i] * vector[rows[i]];
        }

        return sum;
    }

    private int From(int column) => column == 0 ? 0 : ends[column - 1];
}
