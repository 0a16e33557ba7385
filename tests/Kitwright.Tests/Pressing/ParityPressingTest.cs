using System.Collections.Immutable;
using CsCheck;
using Kitwright.Plans;
using Kitwright.Pressing;
using Xunit;

namespace Kitwright.Tests.Pressing;

/// <summary>The parity solver against every way of pressing a few seams.</summary>
public sealed class ParityPressingTest
{
    private static readonly Gen<SeamPair> Pair = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Bool, Gen.Int[1, 4]).Select((a, b, alike, weight) => new SeamPair(a, b, alike, weight));

    /// <summary>Six seams with likings, and up to eight places where they meet.</summary>
    internal static readonly Gen<PressingProblem> Problems = Gen.Select(Gen.Int[-9, 9].Array[6], Pair.Array[0, 8])
        .Select((likes, crossings) => new PressingProblem([.. likes.Select((l, i) => new SeamUnknown(new(new("u"), i), l))], [], [.. crossings], []));

    private static IEnumerable<ImmutableArray<PressToward>> Ways(int count, params PressToward[] states) =>
        count == 0 ? [[]] : from rest in Ways(count - 1, states) from state in states select rest.Add(state);

    private static PressingAnswer NotAsked(PressingProblem problem) => throw new InvalidOperationException("a part that nests was handed on");

    [Fact]
    public void Where_all_can_nest_they_do_in_the_way_that_is_liked_best() =>
        Problems.Sample(problem =>
        {
            var nesting = Ways(6, PressToward.Top, PressToward.Bottom).Where(way => problem.Unnested(way) == 0).ToArray();
            if (nesting.Length == 0)
            {
                return true;
            }

            var answer = ParityPressing.Solve(problem, NotAsked);
            return answer is { Unnested: 0, Proved: true } && problem.Unnested(answer.Choices) == 0 && problem.Liked(answer.Choices) == nesting.Max(problem.Liked);
        });

    [Fact]
    public void Where_not_all_can_nest_only_the_torn_parts_are_handed_on() =>
        Problems.Sample(problem =>
        {
            var canNest = Ways(6, PressToward.Top, PressToward.Bottom).Any(way => problem.Unnested(way) == 0);
            var asked = false;
            var answer = ParityPressing.Solve(
                problem,
                part =>
                {
                    asked = true;
                    return GreedyOpening.Solve(part);
                }
            );
            return asked != canNest && problem.Allows(answer.Choices) && problem.Unnested(answer.Choices) == answer.Unnested;
        });

    [Fact]
    public void The_greedy_answer_is_allowed_and_never_better_than_the_best() =>
        Problems.Sample(problem =>
        {
            var answer = GreedyOpening.Solve(problem);
            var best = Ways(6, PressToward.Top, PressToward.Bottom, PressToward.Open).Where(problem.Allows).Min(problem.Unnested);
            return problem.Allows(answer.Choices) && answer.Unnested >= best;
        });

    /// <summary>Three seams that each must differ from the other two: the least odd ring.</summary>
    [Fact]
    public void An_odd_ring_has_no_answer_in_which_all_nest()
    {
        var forest = new ParityForest(3);
        Assert.True(forest.Join(0, 1, equal: false));
        Assert.True(forest.Join(1, 2, equal: false));
        Assert.False(forest.Join(2, 0, equal: false));
        Assert.True(forest.Join(2, 0, equal: true));
    }
}
