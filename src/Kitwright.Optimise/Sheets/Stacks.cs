using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// Three stages: a sub-cut holds pieces of any kind one above the other. With trimming they are no wider than the
/// sub-cut; without, just as wide.
/// </summary>
internal sealed class Stacks : StripTable
{
    private readonly bool trimmed;
    private readonly ImmutableArray<int> widths;
    private readonly ImmutableArray<ImmutableArray<int>> waysOfWidth;
    private readonly BoundedKnapsack stack;
    private readonly BoundedKnapsack strip;
    private readonly long[][] bestOfWidth;
    private long[] values = [];
    private int[] counts = [];

    public Stacks(Plate plate, bool trimmed, WorkMeter meter)
        : base(plate, meter)
    {
        (stack, strip) = (new(meter), new(meter));
        this.trimmed = trimmed;
        widths = [.. plate.Ways.Select(way => way.Along).Distinct().Order()];
        waysOfWidth = [.. widths.Select(width => Enumerable.Range(0, plate.Ways.Length).Where(w => plate.Ways[w].Along == width).ToImmutableArray())];
        bestOfWidth = [.. widths.Select(_ => new long[plate.Up + 1])];
        Heights = SumsOf([.. plate.Ways.Select(way => way.Across).Distinct()], plate.Up);
        Values = new long[Heights.Length];
    }

    public override long Cells => (Heights.Length * (long)widths.Length * Plate.Across) + (Plate.Ways.Length * (long)Plate.Up);

    protected override void Fill(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most)
    {
        (this.values, this.counts) = (values.ToArray(), counts.ToArray());
        FillStacks(Math.Min(most, Plate.Up));
        for (var h = 0; h < Heights.Length && Heights[h] <= most; h++)
        {
            FillStrip(Heights[h], Plate.Across);
            Values[h] = strip.Value(Plate.Across);
        }
    }

    /// <summary>Sub-cut after sub-cut: the densest of the best strip is cut, and what is left is looked at again.</summary>
    public override PatternStrip Cut(int height)
    {
        var wanted = counts;
        counts = [.. wanted];
        var (most, room) = (Heights[height], Plate.Across);
        var cuts = ImmutableArray.CreateBuilder<PatternSubCut>();
        while (room > 0 && (cuts.Count == 0 || !Meter.MustStop))
        {
            FillStacks(most);
            FillStrip(most, room);
            var chosen = strip.Choice(room);
            if (chosen.Count == 0)
            {
                break;
            }

            var (x, copies) = chosen.MaxBy(c => (double)bestOfWidth[c.Id][most] / widths[c.Id]);
            var cut = StackOf(x, most, copies);
            foreach (var cell in cut.Stack)
            {
                counts[cell.Piece] -= cell.Times * cut.Times;
            }

            cuts.Add(cut);
            room -= widths[x] * cut.Times;
        }

        counts = wanted;
        return new(most, 1, cuts.ToImmutable());
    }

    private PatternSubCut StackOf(int x, int height, int copies)
    {
        stack.Reset(height);
        for (var narrower = trimmed ? 0 : x; narrower <= x; narrower++)
        {
            AdmitToStack(narrower);
        }

        var left = (int[])counts.Clone();
        var cells = new List<StackCell>();
        foreach (var (id, times) in stack.Choice(height))
        {
            // The two ways of a piece are not held to its count together by the table.
            var way = Plate.Ways[id];
            var these = Math.Min(times, left[way.Piece]);
            left[way.Piece] -= these;
            if (these > 0)
            {
                cells.Add(new(way.Piece, way.Turned, these));
            }
        }

        var fits = cells.GroupBy(cell => cell.Piece).Min(same => counts[same.Key] / same.Sum(cell => cell.Times));
        return new(widths[x], Math.Min(copies, fits), [.. cells]);
    }

    private void FillStacks(int most)
    {
        stack.Reset(most);
        for (var x = 0; x < widths.Length; x++)
        {
            if (!trimmed)
            {
                stack.Reset(most);
            }

            AdmitToStack(x);
            stack.Values.CopyTo(bestOfWidth[x]);
        }
    }

    private void AdmitToStack(int x)
    {
        foreach (var w in waysOfWidth[x])
        {
            var way = Plate.Ways[w];
            stack.Add(w, way.Across, values[way.Piece], counts[way.Piece]);
        }
    }

    private void FillStrip(int height, int room)
    {
        strip.Reset(room);
        var narrower = 0L;
        for (var x = 0; x < widths.Length; x++)
        {
            // A wider sub-cut must hold more than a narrower one.
            if (bestOfWidth[x][height] > narrower)
            {
                strip.Add(x, widths[x], bestOfWidth[x][height], int.MaxValue);
                narrower = trimmed ? bestOfWidth[x][height] : narrower;
            }
        }
    }

    /// <summary>Sums of heights, each as often as one likes, up to a limit.</summary>
    private static ImmutableArray<int> SumsOf(ImmutableArray<int> heights, int most)
    {
        var reached = new bool[most + 1];
        reached[0] = true;
        for (var y = 1; y <= most; y++)
        {
            reached[y] = heights.Any(h => h <= y && reached[y - h]);
        }

        return [.. Enumerable.Range(1, most).Where(y => reached[y])];
    }
}
