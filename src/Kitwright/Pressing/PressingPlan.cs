using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Pressing;

/// <summary>
/// Chooses for every seam of a sewing plan which way it is pressed, so that seams which meet nest: one direction a seam
/// of a unit type, with the least trouble that makes all nest; where none does, with the fewest crossings open.
/// </summary>
public static class PressingPlan
{
    public static SewingPlan Of(
        SewingPlan sewing,
        ImmutableArray<CutPiece> pieces,
        ImmutableArray<PlanFabric> fabrics,
        ImmutableArray<BlockDesign> blocks,
        Length seam,
        PressingRules rules,
        OpenSeams openSeams
    )
    {
        sewing = Chosen(sewing, rules);
        var oneWay = fabrics.Where(fabric => fabric.Direction == PrintDirection.OneWay).SelectMany(fabric => fabric.Roles).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<BlockDesign> mayTurn = [.. blocks.Where(block => !block.Patches.Any(patch => oneWay.Contains(patch.Role)))];
        var lightness = ClothLightness.OfRoles(fabrics);
        (SewingPlan Sewing, PressingAnswer Answer, PressingProblem Problem)? best = null;
        var kinds = sewing.Recipes.Count(r => r.Shows is not null && r.Runs > 1);
        foreach (var way in Enum.GetValues<PressingWay>().Where(way => Allowed(way)))
        {
            var split = PressingWays.Split(sewing, way, mayTurn, seam);
            if (way != PressingWay.One && ReferenceEquals(split, sewing))
            {
                continue;
            }

            var trace = SeamTrace.Of(split, pieces, lightness, seam.InInches.ToDouble());
            var problem = ProblemOf(split, trace, rules);
            var answer = ParityPressing.Solve(problem, openSeams);
            if (best is null || answer.Unnested < best.Value.Answer.Unnested)
            {
                best = (split, answer, problem);
            }

            if (answer.Unnested == 0)
            {
                break;
            }
        }

        bool Allowed(PressingWay way) =>
            way switch
            {
                PressingWay.TurnedBlocks => rules.BlocksMayDiffer,
                PressingWay.TwoStacks => rules.BlocksMayDiffer && kinds <= rules.MostStackedBlocks,
                _ => true,
            };

        var (chosen, found, asked) = best!.Value;
        var directions = asked.Seams.Zip(found.Choices).ToDictionary(pair => pair.First.Seam, pair => pair.Second);
        return Named(PressingWays.Joined(new([.. chosen.Recipes.Select(recipe => Pressed(recipe, directions, rules))])));
    }

    /// <summary>What is a choice and no problem: four-patches spun, and how set-in seams lie.</summary>
    private static SewingPlan Chosen(SewingPlan sewing, PressingRules rules)
    {
        var spun = rules.SpinsFourPatches ? FourPatches.Spun(sewing) : sewing;
        return rules.SetIn == PressToward.Top
            ? spun
            : new([.. spun.Recipes.Select(r => r.Kind == "set-in" ? r with { Verbs = [.. r.Verbs.Select(v => v is SewIn sewn ? sewn with { Toward = rules.SetIn } : v)] } : r)]);
    }

    public static PressingProblem ProblemOf(SewingPlan sewing, SeamTrace trace, PressingRules rules)
    {
        var centers = FirstRounds(sewing);
        ImmutableArray<SeamUnknown> seams =
        [
            .. from recipe in sewing.Recipes
            where !rules.OpenKinds.Contains(recipe.Kind)
            from sides in trace.Of(recipe.Id).Sides.OrderBy(s => s.Key.Verb)
            let outward = centers.Contains(recipe.Id) ? rules.Outward * (sides.Key.Verb == recipe.Verbs.Length - 1 ? 1 : -1) : 0
            select new SeamUnknown(sides.Key, rules.TowardTop(Rounds.Last(recipe) is null ? recipe.Kind : PressingRules.Round, sides.Value) + outward),
        ];
        var index = seams.Select((seam, i) => (seam.Seam, i)).ToDictionary(x => x.Seam, x => x.i);
        var ties = trace.Units.Values.SelectMany(u => u.Ties).Where(t => index.ContainsKey(t.One) && index.ContainsKey(t.Other));
        var crossings =
            from recipe in sewing.Recipes
            from crossing in trace.Of(recipe.Id).Crossings
            where index.ContainsKey(crossing.One) && index.ContainsKey(crossing.Other)
            group recipe.Runs by (One: index[crossing.One], Other: index[crossing.Other], crossing.Alike) into same
            select new SeamPair(same.Key.One, same.Key.Other, same.Key.Alike, same.Sum());
        var wishes =
            from seam in seams
            let second = seam.Seam with { Recipe = PressingWays.SecondOf(seam.Seam.Recipe) }
            where index.ContainsKey(second)
            select new SeamPair(index[seam.Seam], index[second], true, 1);
        return new(seams, [.. ties.Select(t => new SeamPair(index[t.One], index[t.Other], t.Alike, 1))], [.. crossings], [.. wishes]);
    }

    /// <summary>Three pieces side by side that plain pieces are then joined to: a center between its first two logs.</summary>
    private static HashSet<PathId> FirstRounds(SewingPlan sewing)
    {
        var rounds = sewing
            .Recipes.Where(r => r.Verbs.OfType<Use>().Count() == 1 && r.Verbs.OfType<Take>().Any() && r.Picture.Tiles.IsEmpty)
            .SelectMany(r => r.Verbs.OfType<Use>().Select(use => use.Unit))
            .ToHashSet();
        return [.. sewing.Recipes.Where(r => rounds.Contains(r.Id) && r.Picture.Parts.Length == 3 && r.Verbs.OfType<Take>().Count() == 3).Select(r => r.Id)];
    }

    private static Recipe Pressed(Recipe recipe, Dictionary<SeamId, PressToward> directions, PressingRules rules) =>
        recipe with
        {
            Verbs =
            [
                .. recipe.Verbs.Select((verb, i) =>
                    verb is Press { Toward: not PressToward.Swirled } press
                        ? press with { Toward = rules.OpenKinds.Contains(recipe.Kind) ? PressToward.Open : directions[new(recipe.Id, i)] }
                        : verb
                ),
            ],
        };

    private static SewingPlan Named(SewingPlan sewing)
    {
        var ids = sewing.Recipes.Select(r => r.Id).ToHashSet();
        return new(
            [
                .. sewing.Recipes.Select(recipe =>
                    PressingWays.IsSecond(recipe.Id) ? recipe with { Name = Message.Of("unit.way", ("name", recipe.Name), ("way", 2)) }
                    : ids.Contains(PressingWays.SecondOf(recipe.Id)) ? recipe with { Name = Message.Of("unit.way", ("name", recipe.Name), ("way", 1)) }
                    : recipe
                ),
            ]
        );
    }
}
