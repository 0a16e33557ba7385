using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>
/// Directions for all seams. Seams that meet hang together in parts; where a part can nest at every crossing, it can in
/// exactly two ways, which are each other's opposite, and the one that is liked better is taken: exact. The other
/// parts are handed on.
/// </summary>
public static class ParityPressing
{
    public static PressingAnswer Solve(PressingProblem problem, OpenSeams openSeams)
    {
        var count = problem.Seams.Length;
        var parts = new ParityForest(count);
        var forest = new ParityForest(count);
        var torn = new HashSet<int>();
        SeamPair[] equations = [.. problem.Ties, .. problem.Crossings];
        foreach (var pair in equations)
        {
            parts.Join(pair.One, pair.Other, equal: true);
        }

        foreach (var pair in equations.Where(pair => !forest.Join(pair.One, pair.Other, pair.Alike)))
        {
            torn.Add(parts.Find(pair.One).Root);
        }

        bool Torn(int seam) => torn.Contains(parts.Find(seam).Root);

        // Unjoined wishes between whole parts cost nothing.
        foreach (var wish in problem.Wishes.Where(w => !Torn(w.One) && !Torn(w.Other)))
        {
            forest.Join(wish.One, wish.Other, wish.Alike);
        }

        var choices = Majority(problem, forest);
        long unnested = 0,
            atLeast = 0;
        foreach (var group in Enumerable.Range(0, count).Where(Torn).GroupBy(i => parts.Find(i).Root))
        {
            int[] members = [.. group];
            var answer = openSeams(Part(problem, members));
            for (var i = 0; i < members.Length; i++)
            {
                choices[members[i]] = answer.Choices[i];
            }

            unnested += answer.Unnested;
            atLeast += answer.AtLeast;
        }

        return new([.. choices], unnested, atLeast);
    }

    private static PressToward[] Majority(PressingProblem problem, ParityForest forest)
    {
        var likes = new long[problem.Seams.Length];
        for (var i = 0; i < likes.Length; i++)
        {
            var (root, differs) = forest.Find(i);
            likes[root] += differs ? -problem.Seams[i].TowardTop : problem.Seams[i].TowardTop;
        }

        return
        [
            .. Enumerable
                .Range(0, likes.Length)
                .Select(i => forest.Find(i) is var (root, differs) && likes[root] >= 0 != differs ? PressToward.Top : PressToward.Bottom),
        ];
    }

    private static PressingProblem Part(PressingProblem problem, int[] members)
    {
        var index = members.Select((seam, i) => (seam, i)).ToDictionary(x => x.seam, x => x.i);
        return new(
            [.. members.Select(m => problem.Seams[m])],
            Within(problem.Ties),
            Within(problem.Crossings),
            Within(problem.Wishes)
        );

        ImmutableArray<SeamPair> Within(ImmutableArray<SeamPair> pairs) =>
            [.. pairs.Where(p => index.ContainsKey(p.One) && index.ContainsKey(p.Other)).Select(p => p with { One = index[p.One], Other = index[p.Other] })];
    }
}
