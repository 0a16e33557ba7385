using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>What a person may choose about pressing: for each habit its ways, the usual one first.</summary>
/// <param name="Name">As quilt files write it: <c>logs</c>.</param>
/// <param name="IsIn">Whether a quilt has such seams.</param>
public sealed record PressingChoice(string Name, ImmutableArray<string> Ways, Func<SewingPlan, bool> IsIn)
{
    public bool Has(string way) => Ways.Contains(way);
}

/// <summary>All habits that can be chosen.</summary>
public static class PressingBook
{
    public static ImmutableArray<PressingChoice> Choices { get; } =
        [
            new("logs", ["away", "center"], sewing => sewing.Recipes.Any(r => Rounds.Last(r) is not null)),
            new("geese", ["sky", "goose"], sewing => sewing.Recipes.Any(r => r.Kind is "goose-flip" or "snowball")),
            new("sashing", ["sashing", "blocks"], sewing => sewing.Recipes.Any(r => r.Kind is "block-row" or "center" && r.Verbs.Any(v => v is Take) && r.Verbs.Any(v => v is Use))),
            new("border", ["border", "center"], sewing => sewing.Recipes.Any(r => r.Kind == "bordered")),
            new("cloth", ["dark", "either"], sewing => sewing.Recipes.Any(r => r.Verbs.Any(v => v is Press))),
            new("joins", ["open", "side"], sewing => sewing.Recipes.Any(r => r.Kind == "joined-strip")),
            new("four-patch", ["flat", "spun"], sewing => sewing.Recipes.Any(FourPatches.Is)),
            new("set-in", ["part", "swirled", "open"], sewing => sewing.Recipes.Any(r => r.Kind == "set-in")),
            new("alike", ["turned", "open"], sewing => sewing.Recipes.Any(r => r.Shows is not null && r.Runs > 1)),
        ];

    public static PressingChoice? Choice(string name) => Choices.FirstOrDefault(choice => choice.Name == name);

    /// <summary>What a quilt chose, or the usual way.</summary>
    public static string Of(ImmutableSortedDictionary<string, string>? chosen, string name)
    {
        var choice = Choice(name)!;
        return chosen?.GetValueOrDefault(name) is { } way && choice.Has(way) ? way : choice.Ways[0];
    }

    /// <summary>What a quilt asks for that is in no book: said, and left aside.</summary>
    public static IEnumerable<Finding> Unknown(ImmutableSortedDictionary<string, string>? chosen) =>
        from pair in chosen ?? ImmutableSortedDictionary<string, string>.Empty
        where Choice(pair.Key)?.Has(pair.Value) != true
        select Finding.NoteOf("pressing.unknown", $"/pressing/{pair.Key}", ("habit", pair.Key), ("way", pair.Value));
}
