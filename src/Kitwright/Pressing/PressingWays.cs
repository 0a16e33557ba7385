using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>What may be done so that seams of equal units nest, from the least trouble up.</summary>
public enum PressingWay
{
    /// <summary>Every unit one way.</summary>
    One,

    /// <summary>Equal rows in two ways, one for every second row.</summary>
    Rows,

    /// <summary>And every second block turned half round, where that does not change how it looks.</summary>
    TurnedBlocks,

    /// <summary>And equal blocks in two ways, in two stacks.</summary>
    TwoStacks,
}

/// <summary>Splits equal rows and blocks into two ways of pressing, which alternate, and joins again what came out equal.</summary>
internal static class PressingWays
{
    private const string Second = "way/2";

    /// <returns>The same plan where there is nothing that this way could split or turn.</returns>
    public static SewingPlan Split(SewingPlan sewing, PressingWay way, ImmutableArray<BlockDesign> blocks, Length seam)
    {
        if (way == PressingWay.One)
        {
            return sewing;
        }

        var alternating = sewing.Recipes.Where(r => Alternates(r, way)).Select(r => r.Id).ToHashSet();
        var within = way == PressingWay.TwoStacks ? Within(sewing, alternating) : [];
        var turned =
            way == PressingWay.Rows
                ? []
                : sewing.Recipes.Where(r => !alternating.Contains(r.Id) && LooksTheSameTurned(r, blocks)).ToDictionary(r => r.Id, r => HalfTurn(r, seam));
        if (alternating.Count == 0 && !sewing.Recipes.Any(r => r.Verbs.OfType<Use>().Count(use => turned.ContainsKey(use.Unit)) > 1))
        {
            return sewing;
        }

        while (true)
        {
            var split = new Ways(alternating, within, turned);
            var recounted = Recounted(
                [.. sewing.Recipes.SelectMany(r => split.IsSplit(r.Id) ? [Along(r, 0, split), Along(r, 1, split) with { Id = SecondOf(r.Id) }] : new[] { Along(r, 0, split) })]
            );
            // Units that come two or more at a time are split only where neither way leaves one over.
            var runs = recounted.Recipes.ToDictionary(r => r.Id, r => r.Runs);
            var uneven = sewing.Recipes.Where(r => within.Contains(r.Id) && runs.GetValueOrDefault(r.Id) + runs.GetValueOrDefault(SecondOf(r.Id)) > r.Runs).Select(r => r.Id).ToArray();
            if (uneven.Length == 0)
            {
                return recounted;
            }

            within.ExceptWith(uneven);
        }
    }

    /// <summary>What is split, and how its ways are dealt out.</summary>
    /// <param name="Alternating">Rows and blocks: every second one.</param>
    /// <param name="Within">Units inside blocks: the way of the block that they go into.</param>
    /// <param name="Turned">Blocks of which every second one is turned instead.</param>
    private sealed record Ways(HashSet<PathId> Alternating, HashSet<PathId> Within, Dictionary<PathId, Motion> Turned)
    {
        public bool IsSplit(PathId id) => Alternating.Contains(id) || Within.Contains(id);
    }

    private static HashSet<PathId> Within(SewingPlan sewing, HashSet<PathId> alternating)
    {
        var found = new HashSet<PathId>();
        foreach (var recipe in sewing.Recipes.Reverse().Where(r => found.Contains(r.Id) || (alternating.Contains(r.Id) && r.Shows is not null)))
        {
            found.UnionWith(recipe.Verbs.OfType<Use>().Select(use => use.Unit));
        }

        return [.. sewing.Recipes.Where(r => found.Contains(r.Id) && r.Runs > 1 && r.Verbs.OfType<Press>().Any()).Select(r => r.Id)];
    }

    public static bool IsSecond(PathId id) => id.Value.EndsWith(Second, StringComparison.Ordinal);

    public static PathId SecondOf(PathId first) => new($"{first.Value}/{Second}");

    /// <summary>Second ways that are pressed as the first are the first.</summary>
    public static SewingPlan Joined(SewingPlan sewing)
    {
        var kept = new List<Recipe>();
        var names = new Dictionary<PathId, PathId>();
        foreach (var recipe in sewing.Recipes)
        {
            var renamed = recipe with
            {
                Verbs = [.. recipe.Verbs.Select(v => v is Use use ? use with { Unit = names.GetValueOrDefault(use.Unit, use.Unit) } : v)],
                Picture = recipe.Picture with { Parts = [.. recipe.Picture.Parts.Select(p => p with { Of = names.GetValueOrDefault(p.Of, p.Of) })] },
            };
            if (kept.FirstOrDefault(first => SecondOf(first.Id) == recipe.Id && first.Verbs.SequenceEqual(renamed.Verbs)) is { } same)
            {
                names[recipe.Id] = same.Id;
            }
            else
            {
                kept.Add(renamed);
            }
        }

        return Recounted([.. kept]);
    }

    private static bool Alternates(Recipe recipe, PressingWay way) =>
        recipe.Makes.Length == 1
        && recipe.Runs > 1
        && (recipe.Shows is null ? recipe.Picture.Tiles.Length > 0 : way == PressingWay.TwoStacks && recipe.Shows != Recipe.WholeTop && recipe.Verbs.OfType<Press>().Any());

    // The k-th way of a unit begins with the k-th way of its first part that has two.
    private static Recipe Along(Recipe recipe, int way, Ways ways)
    {
        var next = way;
        var names = new List<(PathId Before, PathId After)>();
        var verbs = recipe
            .Verbs.Select(verb =>
            {
                if (verb is not Use use)
                {
                    return verb;
                }

                var changed =
                    ways.Within.Contains(use.Unit) ? (way == 1 ? use with { Unit = SecondOf(use.Unit) } : use)
                    : ways.Alternating.Contains(use.Unit) ? (next++ % 2 == 1 ? use with { Unit = SecondOf(use.Unit) } : use)
                    : ways.Turned.TryGetValue(use.Unit, out var turn) ? (next++ % 2 == 1 ? use with { Motion = turn.Then(use.Motion) } : use)
                    : use;
                names.Add((use.Unit, changed.Unit));
                return changed;
            })
            .ToImmutableArray();
        // Parts stand in the order of sewing, as uses do.
        var rest = new Queue<(PathId Before, PathId After)>(names);
        return recipe with
        {
            Verbs = verbs,
            Picture = recipe.Picture with
            {
                Parts = [.. recipe.Picture.Parts.Select(part => rest.TryPeek(out var name) && name.Before == part.Of ? part with { Of = rest.Dequeue().After } : part)],
            },
        };
    }

    private static bool LooksTheSameTurned(Recipe recipe, ImmutableArray<BlockDesign> blocks) =>
        recipe.Shows is { } shows
        && recipe.Verbs.OfType<Press>().Any()
        && blocks.FirstOrDefault(b => b.Id == shows) is { } block
        && Look(block.Patches).SetEquals(Look([.. block.Patches.Select(p => p with { Shape = p.Shape.Moved(HalfTurn(block.Width, block.Height)) })]));

    private static HashSet<string> Look(ImmutableArray<Patch> patches) =>
        [.. patches.Select(p => p.Role + string.Join(';', p.Shape.Corners.Select(c => c.ToString()).Order(StringComparer.Ordinal)))];

    private static Motion HalfTurn(Recipe recipe, Length seam) => HalfTurn(recipe.Width - (seam * 2), recipe.Height - (seam * 2));

    private static Motion HalfTurn(Length width, Length height) => Motion.QuarterTurns(2).Then(Motion.Shift(width, height));

    /// <summary>Runs from the top down, after uses have moved between equal units.</summary>
    private static SewingPlan Recounted(ImmutableArray<Recipe> recipes)
    {
        var copies = new Dictionary<PathId, int> { [recipes[^1].Id] = 1 };
        var counted = new List<Recipe>();
        foreach (var recipe in recipes.Reverse())
        {
            var wanted = copies.GetValueOrDefault(recipe.Id);
            if (wanted == 0)
            {
                continue;
            }

            var runs = (wanted + recipe.Makes.Length - 1) / recipe.Makes.Length;
            foreach (var use in recipe.Verbs.OfType<Use>())
            {
                copies[use.Unit] = copies.GetValueOrDefault(use.Unit) + runs;
            }

            counted.Add(recipe with { Runs = runs });
        }

        counted.Reverse();
        return new([.. counted]);
    }
}
