using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>How the seams of a finished plan meet, read off its own verbs.</summary>
public sealed record PressingReport(ImmutableArray<StepCrossings> Steps)
{
    public long Crossings => Steps.Sum(s => (long)s.Each * s.Runs);

    public long Nested => Steps.Sum(s => (long)s.NestedEach * s.Runs);

    public StepCrossings? Of(PathId recipe) => Steps.FirstOrDefault(s => s.Recipe == recipe);

    public static PressingReport Of(QuiltPlan plan, SeamTrace trace)
    {
        var toward = plan
            .Sewing.Recipes.SelectMany(r => r.Verbs.Select((verb, i) => (Id: new SeamId(r.Id, i), Press: verb as Press)))
            .Where(x => x.Press is not null)
            .ToDictionary(x => x.Id, x => x.Press!.Toward);
        return new(
            [
                .. plan
                    .Sewing.Recipes.Select(recipe => (recipe, Crossings: trace.Of(recipe.Id).Crossings))
                    .Where(x => x.Crossings.Length > 0)
                    .Select(x => new StepCrossings(
                        x.recipe.Id,
                        x.recipe.Runs,
                        x.Crossings.Length,
                        x.Crossings.Count(c => Nests(c, toward)),
                        [.. x.Crossings.Where(c => !Nests(c, toward)).Select(c => c.At)]
                    )),
            ]
        );
    }

    private static bool Nests(Crossing crossing, Dictionary<SeamId, PressToward> toward)
    {
        var (one, other) = (toward[crossing.One], toward[crossing.Other]);
        return one != PressToward.Open && other != PressToward.Open && one == other == crossing.Alike;
    }
}

/// <summary>Where seams meet in one step.</summary>
/// <param name="Each">Crossings in one run.</param>
/// <param name="NestedEach">Those at which the allowances lie on opposite sides.</param>
/// <param name="Others">Where the others are, in the unit's coordinates.</param>
public sealed record StepCrossings(PathId Recipe, int Runs, int Each, int NestedEach, ImmutableArray<Spot> Others);
