using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>
/// Names what a log cabin grows by, a round of four logs at a time: "round 2 of the Courthouse steps block, first two
/// logs". Logs are pieces, joined one at a time or two on opposite sides, each across the whole side of what is there.
/// </summary>
internal static class LogRounds
{
    private const int LogsInRound = 4;

    /// <summary>With a single round or less it is a square in a frame.</summary>
    private const int FewestLogs = LogsInRound + 2;

    /// <param name="into">What the unit is joined into; named already where it is not a round itself.</param>
    /// <returns>Null where the unit is no part of a log cabin.</returns>
    public static Message? Name(Recipe recipe, Dictionary<PathId, Recipe> named, PathId[] into)
    {
        if (into is not [var next] || Logs(recipe, named) is not { } logs)
        {
            return null;
        }

        var outer = named[next];
        if (outer.Name.Key == "unit.round")
        {
            return Message.Of("unit.round", ("round", Round(logs)), ("logs", InRound(logs)), ("whole", outer.Name.Slots["whole"]));
        }

        // The last log of a block makes the block; a middle row of something else is just that.
        var all = Logs(outer, named) ?? logs;
        return outer.Shows is not null && outer.Shows != Recipe.WholeTop && all >= FewestLogs
            ? Message.Of("unit.round", ("round", Round(logs)), ("logs", InRound(logs)), ("whole", outer.Name))
            : null;
    }

    private static int Round(int logs) => ((logs - 1) / LogsInRound) + 1;

    private static int InRound(int logs) => ((logs - 1) % LogsInRound) + 1;

    /// <summary>Logs round the center so far; null where it is not built of logs round a center.</summary>
    private static int? Logs(Recipe recipe, Dictionary<PathId, Recipe> named)
    {
        var taken = recipe.Verbs.OfType<Take>().Count();
        var parts = recipe.Picture.Parts.Length;
        if (parts is not (2 or 3) || !recipe.Picture.Tiles.IsEmpty || (recipe.Kind != "joined" && recipe.Shows is null))
        {
            return null;
        }

        if (taken == parts)
        {
            return parts - 1;
        }

        return recipe.Verbs.OfType<Use>().ToArray() is [var use]
            && taken == parts - 1
            && named[use.Unit] is { } inner
            && (parts == 2 || recipe.Picture.Parts[1].Of == use.Unit)
            && Logs(inner, named) is { } within
            ? within + taken
            : null;
    }
}
