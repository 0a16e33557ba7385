using Kitwright.Cutting;
using Kitwright.Plans;

namespace Kitwright.Optimise.Tests.Cutting;

/// <summary>
/// The least sum of strip heights by trying everything: all ways to share the pieces out over strips, all ways to turn
/// them. For up to eight pieces, sizes in whole inches.
/// </summary>
internal static class EveryWayOfCutting
{
    public static int Least(ClothProblem problem)
    {
        var width = (int)problem.Terms.StripLength.InInches.Floor();
        var pieces = problem.Demand.SelectMany(demand => Enumerable.Repeat(demand, demand.Count)).ToArray();
        var all = (1 << pieces.Length) - 1;
        var strip = Enumerable.Range(0, all + 1).Select(set => StripHeight(pieces, set, width)).ToArray();
        var least = new int[all + 1];
        for (var set = 1; set <= all; set++)
        {
            least[set] = int.MaxValue;
            for (var first = set; first > 0; first = (first - 1) & set)
            {
                if (strip[first] < int.MaxValue)
                {
                    least[set] = Math.Min(least[set], strip[first] + least[set ^ first]);
                }
            }
        }

        return least[all];
    }

    /// <summary>The lowest strip that holds all pieces of the set, over every choice of turns.</summary>
    private static int StripHeight(ClothDemand[] pieces, int set, int width)
    {
        var lowest = int.MaxValue;
        for (var turns = set; ; turns = (turns - 1) & set)
        {
            var (used, height) = (0, 0);
            for (var i = 0; i < pieces.Length; i++)
            {
                if ((set >> i & 1) == 0)
                {
                    continue;
                }

                var turned = (turns >> i & 1) != 0;
                var (w, h) = ((int)pieces[i].Width.InInches.Floor(), (int)pieces[i].Height.InInches.Floor());
                used += turned && !pieces[i].MayTurn ? width + 1 : turned ? h : w;
                height = Math.Max(height, turned ? w : h);
            }

            lowest = used <= width ? Math.Min(lowest, height) : lowest;
            if (turns == 0)
            {
                return set == 0 ? 0 : lowest;
            }
        }
    }
}
