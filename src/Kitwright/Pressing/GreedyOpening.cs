using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>
/// A quick answer where not all crossings can nest: equations are taken in, the weightiest first, and for each that no
/// longer fits, the one of its two seams is pressed open that loses less.
/// </summary>
public static class GreedyOpening
{
    public static PressingAnswer Solve(PressingProblem problem)
    {
        var open = new bool[problem.Seams.Length];
        var forest = new ParityForest(open.Length);
        foreach (var tie in problem.Ties.Where(tie => !forest.Join(tie.One, tie.Other, tie.Alike)))
        {
            Open(tie.One);
        }

        foreach (var crossing in problem.Crossings.OrderByDescending(c => c.Weight))
        {
            if (!open[crossing.One] && !open[crossing.Other] && !forest.Join(crossing.One, crossing.Other, crossing.Alike))
            {
                Open(Loss(crossing.One) <= Loss(crossing.Other) ? crossing.One : crossing.Other);
            }
        }

        var likes = new long[open.Length];
        for (var i = 0; i < open.Length; i++)
        {
            var (root, differs) = forest.Find(i);
            likes[root] += differs ? -problem.Seams[i].TowardTop : problem.Seams[i].TowardTop;
        }

        ImmutableArray<PressToward> choices =
        [
            .. Enumerable.Range(0, open.Length).Select(i =>
                open[i] ? PressToward.Open
                : forest.Find(i) is var (root, differs) && likes[root] >= 0 != differs ? PressToward.Top
                : PressToward.Bottom
            ),
        ];
        return new(choices, problem.Unnested(choices), 0);

        long Loss(int seam) => problem.Crossings.Where(c => c.One == seam || c.Other == seam).Sum(c => c.Weight);

        // Tied seams are pressed alike: all that hang together by ties open together.
        void Open(int seam)
        {
            var rest = new Stack<int>([seam]);
            while (rest.TryPop(out var next))
            {
                if (!open[next])
                {
                    open[next] = true;
                    foreach (var tie in problem.Ties.Where(t => t.One == next || t.Other == next))
                    {
                        rest.Push(tie.One == next ? tie.Other : tie.One);
                    }
                }
            }
        }
    }
}
