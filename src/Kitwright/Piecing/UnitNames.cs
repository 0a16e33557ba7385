using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>
/// Names joined units by where they go, as a quilter calls them: "top row of the Star block", "left half of the bottom
/// row". A unit that goes to several places is named by what they have in common.
/// </summary>
internal static class UnitNames
{
    /// <summary>Where a part lies in the unit that it is joined into.</summary>
    /// <param name="Of">Parts in all.</param>
    /// <param name="Index">From the top, or from the left.</param>
    private readonly record struct Spot(PathId In, bool Upright, int Of, int Index);

    public static ImmutableArray<Recipe> Apply(ImmutableArray<Recipe> recipes)
    {
        var spots = recipes.SelectMany(Spots).ToLookup(s => s.Of, s => s.Spot);
        var named = recipes.ToDictionary(r => r.Id);
        // What a unit goes into comes after it, and gives it its name.
        for (var i = recipes.Length - 1; i >= 0; i--)
        {
            var recipe = recipes[i];
            if (recipe.Kind is "joined" or "block-row" && Name(recipe, [.. spots[recipe.Id].Distinct()], named) is { } name)
            {
                named[recipe.Id] = recipe with { Name = name };
            }
        }

        return [.. recipes.Select(r => named[r.Id])];
    }

    private static IEnumerable<(PathId Of, Spot Spot)> Spots(Recipe recipe)
    {
        var parts = recipe.Picture.Parts;
        if (parts.Length < 2 || recipe.Kind is "mitered" or "set-in" or "partial")
        {
            yield break;
        }

        var centers = parts.Select(p => Middle(p.Outline)).ToArray();
        var step = centers[^1] - centers[0];
        var upright = step.X.IsZero;
        if (!upright && !step.Y.IsZero)
        {
            yield break;
        }

        var order = Enumerable.Range(0, parts.Length).OrderBy(i => upright ? -centers[i].Y : centers[i].X).ToArray();
        for (var i = 0; i < order.Length; i++)
        {
            yield return (parts[order[i]].Of, new(recipe.Id, upright, parts.Length, i));
        }
    }

    private static Point Middle(Polygon outline)
    {
        var (low, high) = outline.Bounds();
        return (low + high) * ((Surd)1 / 2);
    }

    private static Message? Name(Recipe recipe, Spot[] spots, Dictionary<PathId, Recipe> named)
    {
        if (spots.Length == 0)
        {
            return null;
        }

        if (LogRounds.Name(recipe, named, spots.Select(s => s.In).Distinct().ToArray()) is { } log)
        {
            return log;
        }

        var into = spots.Select(s => s.In).Distinct().ToArray();
        var word = Word(spots);
        // The middle of three round by round, as in a log cabin, would be the middle of a middle of a middle.
        if (into is [var round] && word is "place.middle-row" or "place.middle-column" && named[round].Kind == "joined")
        {
            return Message.Of("unit.inner", ("patches", recipe.Picture.Patches.Length));
        }

        if (recipe.Picture.Tiles.Length > 0)
        {
            return Message.Of("unit.of-blocks", ("line", spots[0].Upright ? "row" : "column"), ("blocks", recipe.Picture.Tiles.Length));
        }

        return into switch
        {
            [var one] when named[one] is { Kind: "center" or "bordered" or "top" } => Message.Of("unit.of-sashes", ("line", spots[0].Upright ? "row" : "column")),
            [var one] when named[one].Shows is not null || named[one].Name is { Key: "unit.placed" } whole && !IsNested(whole) => Message.Of("unit.placed", ("place", Message.Of(word)), ("whole", named[one].Name)),
            [var one] when named[one].Kind == "joined" => Message.Of("unit.placed-within", ("place", Message.Of(word)), ("patches", named[one].Picture.Patches.Length)),
            _ => Message.Of("unit.placed-often", ("place", Message.Of(word)), ("times", into.Length)),
        };
    }

    /// <summary>"Left half of the top row of the block" is as long as a name may be.</summary>
    private static bool IsNested(Message name) => name.Slots["whole"] is Message { Key: "unit.placed" };

    /// <summary>The word for one place, or for all of several.</summary>
    private static string Word(Spot[] spots)
    {
        var (upright, of) = (spots[0].Upright, spots[0].Of);
        if (spots.Any(s => s.Upright != upright || s.Of != of))
        {
            return "place.part";
        }

        var line = upright ? "row" : "column";
        int[] at = [.. spots.Select(s => s.Index).Distinct().Order()];
        return (of, at) switch
        {
            (2, [0]) => upright ? "place.top-half" : "place.left-half",
            (2, [1]) => upright ? "place.bottom-half" : "place.right-half",
            (2, _) => "place.half",
            (_, [0]) => upright ? "place.top-row" : "place.left-column",
            (_, [var last]) when last == of - 1 => upright ? "place.bottom-row" : "place.right-column",
            (3, [1]) => $"place.middle-{line}",
            (_, [0, var last]) when last == of - 1 => $"place.outer-{line}",
            _ => $"place.{line}",
        };
    }
}
