using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// The most valuable strip of every candidate height on one plate: the lower stages of a multistage knapsack, which
/// differ by what a strip may hold.
/// </summary>
/// <remarks>P. C. Gilmore and R. E. Gomory, "Multistage cutting stock problems of two and more dimensions", Operations Research 13 (1965).</remarks>
internal abstract class StripTable(Plate plate, WorkMeter meter)
{
    protected Plate Plate => plate;
    protected WorkMeter Meter => meter;

    /// <summary>Candidate heights, ascending.</summary>
    public ImmutableArray<int> Heights { get; protected init; } = [];

    /// <summary>Greatest value of a strip of each candidate height after <see cref="Solve"/>, in one layer; 0 above the limit.</summary>
    public long[] Values { get; protected init; } = [];

    /// <summary>Table cells of one solve.</summary>
    public abstract long Cells { get; }

    /// <summary>Greatest values, an upper bound on them where pieces are stacked; never more than all pieces together.</summary>
    /// <param name="values">Of each piece; none negative.</param>
    /// <param name="counts">In one strip a piece lies at most so often.</param>
    /// <param name="most">No strip higher than this is looked at.</param>
    public void Solve(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most)
    {
        meter.Charge(StepsPerSolve);
        Array.Clear(Values);
        Fill(values, counts, most);
        var seen = new bool[counts.Length];
        var (all, way) = (0L, 0);
        for (var h = 0; h < Heights.Length; h++)
        {
            for (; way < plate.Ways.Length && plate.Ways[way].Across <= Heights[h]; way++)
            {
                var piece = plate.Ways[way].Piece;
                all += seen[piece] ? 0 : values[piece] * counts[piece];
                seen[piece] = true;
            }

            Values[h] = Math.Min(Values[h], all);
        }
    }

    /// <summary>A good strip of a candidate height, for the values of the last <see cref="Solve"/>: no piece more often than its count.</summary>
    public abstract PatternStrip Cut(int height);

    protected abstract void Fill(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most);

    private const long StepsPerSolve = 5000;

    public static StripTable Of(SheetTerms terms, Plate plate, WorkMeter meter) =>
        (terms.Stages, terms.Last) switch
        {
            (2, LastCut.Homogeneous) => new AlikeStrips(plate, meter),
            (2, _) => new SideBySide(plate, terms.Last == LastCut.NonExact, meter),
            (_, LastCut.Homogeneous) => new AlikeStacks(plate, meter),
            _ => new Stacks(plate, terms.Last == LastCut.NonExact, meter),
        };
}
