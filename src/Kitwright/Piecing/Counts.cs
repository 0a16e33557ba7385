using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>How often each recipe is run, and how many of each piece that takes: from the top down.</summary>
internal static class Counts
{
    public static (ImmutableArray<Recipe> Recipes, Dictionary<PathId, int> Pieces) Of(
        IReadOnlyList<Draft> drafts,
        Seams seams
    )
    {
        var copies = new Dictionary<PathId, int> { [drafts[^1].Id] = 1 };
        var pieces = new Dictionary<PathId, int>();
        var recipes = new List<Recipe>();
        for (var i = drafts.Count - 1; i >= 0; i--)
        {
            var draft = drafts[i];
            var wanted = copies.GetValueOrDefault(draft.Id);
            if (wanted == 0)
            {
                // A block of the file that no cell uses is not made.
                continue;
            }

            var runs = (wanted + draft.Makes.Length - 1) / draft.Makes.Length;
            foreach (var verb in draft.Verbs)
            {
                var (table, id) = verb switch
                {
                    Take take => (pieces, take.Piece),
                    Use use => (copies, use.Unit),
                    _ => (null, default),
                };
                if (table is not null)
                {
                    table[id] = table.GetValueOrDefault(id) + runs;
                }
            }

            recipes.Add(
                new(
                    draft.Id,
                    draft.Kind,
                    draft.Verbs,
                    draft.Makes,
                    runs,
                    seams.Rectangle(draft.FinishedWidth),
                    seams.Rectangle(draft.FinishedHeight),
                    draft.Shows,
                    draft.Name
                )
                {
                    Picture = draft.Picture,
                    Outline = draft.Outline,
                }
            );
        }

        recipes.Reverse();
        return ([.. recipes], pieces);
    }
}
