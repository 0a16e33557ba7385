using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Tests.Sheets;

/// <summary>
/// The least cost by trying every cut at every whole inch: for a handful of pieces, sizes in whole inches, and sheets
/// of which there are as many as one likes. A set of pieces is a list of counts, written as one number.
/// </summary>
internal sealed class EveryWayOfSheets
{
    private readonly SheetProblem problem;
    private readonly (int W, int H, int Count, bool Turn)[] pieces;
    private readonly int[] weights;
    private readonly Dictionary<(int, int, int, bool), HashSet<int>> known = [];

    private EveryWayOfSheets(SheetProblem problem)
    {
        this.problem = problem;
        pieces = [.. problem.Demand.Select(d => ((int)d.Width.InInches.Numerator, (int)d.Height.InInches.Numerator, d.Count, d.MayTurn))];
        weights = new int[pieces.Length + 1];
        weights[0] = 1;
        for (var i = 0; i < pieces.Length; i++)
        {
            weights[i + 1] = weights[i] * (pieces[i].Count + 1);
        }
    }

    public static int Least(SheetProblem problem) => new EveryWayOfSheets(problem).Least();

    private int Least()
    {
        var all = weights[^1] - 1;
        var least = new int[all + 1];
        Array.Fill(least, int.MaxValue);
        least[0] = 0;
        var patterns = problem
            .Sheets.SelectMany(sheet =>
            {
                var (w, h) = ((int)sheet.Width.InInches.Numerator, (int)sheet.Height!.Value.InInches.Numerator);
                var first = problem.Terms.First;
                var sets = new HashSet<int>();
                if (first != FirstCut.Along)
                {
                    sets.UnionWith(Sets(w, h, problem.Terms.Stages, across: true));
                }

                if (first != FirstCut.Across)
                {
                    sets.UnionWith(Sets(w, h, problem.Terms.Stages, across: false));
                }

                return sets.Select(set => (Set: set, Cost: (int)sheet.Cost.Numerator));
            })
            .ToList();
        for (var set = 0; set <= all; set++)
        {
            foreach (var pattern in patterns.Where(_ => least[set] < int.MaxValue))
            {
                if (Sum(set, pattern.Set) is { } more)
                {
                    least[more] = Math.Min(least[more], least[set] + pattern.Cost);
                }
            }
        }

        return least[all];
    }

    /// <summary>What can be cut from a rectangle in so many stages, of which the next cuts across the width or down.</summary>
    private HashSet<int> Sets(int w, int h, int stages, bool across)
    {
        if (known.TryGetValue((w, h, stages, across), out var found))
        {
            return found;
        }

        var sets = new HashSet<int> { 0 };
        known[(w, h, stages, across)] = sets;
        if (stages == 0)
        {
            sets.UnionWith(Enumerable.Range(0, pieces.Length).Where(i => Fits(i, w, h)).Select(i => weights[i]));
            return sets;
        }

        for (var cut = 1; cut <= (across ? h : w); cut++)
        {
            var (part, rest) = across
                ? (Sets(w, cut, stages - 1, false), Sets(w, h - cut, stages, true))
                : (Sets(cut, h, stages - 1, true), Sets(w - cut, h, stages, false));
            sets.UnionWith(from x in part from y in rest let both = Sum(x, y) where both is not null select both.Value);
        }

        return sets;
    }

    private bool Fits(int i, int w, int h)
    {
        var (pw, ph, _, turn) = pieces[i];
        bool Holds(int x, int y) => problem.Terms.Last == LastCut.NonExact ? x <= w && y <= h : x == w && y == h;
        return Holds(pw, ph) || (turn && Holds(ph, pw));
    }

    /// <summary>Null where a piece would be there more often than it is wanted.</summary>
    private int? Sum(int x, int y)
    {
        for (var i = 0; i < pieces.Length; i++)
        {
            int Of(int set) => set / weights[i] % (pieces[i].Count + 1);
            if (Of(x) + Of(y) > pieces[i].Count)
            {
                return null;
            }
        }

        return x + y;
    }
}
