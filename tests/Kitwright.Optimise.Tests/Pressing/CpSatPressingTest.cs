using System.Collections.Immutable;
using CsCheck;
using Kitwright.Optimise.Pressing;
using Kitwright.Plans;
using Kitwright.Pressing;
using Xunit;

namespace Kitwright.Optimise.Tests.Pressing;

/// <summary>The partial answer against every way of pressing five seams, open among them.</summary>
public sealed class CpSatPressingTest
{
    private static readonly Gen<SeamPair> Pair = Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Bool, Gen.Int[1, 4]).Select((a, b, alike, weight) => new SeamPair(a, b, alike, weight));

    private static readonly Gen<PressingProblem> Problems = Gen.Select(Gen.Int[-9, 9].Array[5], Pair.Array[0, 9], Pair.Array[0, 2])
        .Select((likes, crossings, ties) =>
            new PressingProblem(
                [.. likes.Select((l, i) => new SeamUnknown(new(new("u"), i), l))],
                // Two copies of a seam are never tied against themselves.
                [.. ties.Where(t => t.One < t.Other).DistinctBy(t => (t.One, t.Other)).Take(1)],
                [.. crossings],
                []
            )
        );

    // Swirled is a habit that is asked for, and never the search's own choice.
    private static readonly PressToward[] Sides = [PressToward.Top, PressToward.Bottom, PressToward.Open];

    private static IEnumerable<ImmutableArray<PressToward>> Ways(int count) =>
        count == 0 ? [[]] : from rest in Ways(count - 1) from state in Sides select rest.Add(state);

    [Fact]
    public void It_leaves_as_few_crossings_as_can_be_then_as_few_seams_open_then_what_is_liked() =>
        Problems.Sample(IsBest, iter: 60, threads: 1);

    [Fact]
    public void An_open_seam_is_not_credited_with_the_side_it_would_have_lain_to() =>
        Problems.Sample(IsBest, seed: "5zLbBr7GSRt3", iter: 1, threads: 1);

    private static bool IsBest(PressingProblem problem)
    {
        var best = Ways(5)
            .Where(problem.Allows)
            .Min(way => (problem.Unnested(way), way.Count(c => c == PressToward.Open), -problem.Liked(way)));
        var answer = CpSatPressing.Solve(problem);
        var found = (problem.Unnested(answer.Choices), answer.Choices.Count(c => c == PressToward.Open), -problem.Liked(answer.Choices));
        return problem.Allows(answer.Choices) && found == best && answer.Proved;
    }
}
