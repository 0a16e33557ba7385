using System.Collections.Immutable;
using CsCheck;
using Kitwright.Cutting;
using Kitwright.Cutting.Instructions;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Print.Tests.Words;

/// <summary>Whatever is to be cut, the lines together ask for exactly that.</summary>
public sealed class CutInstructionsLawTest
{
    private static readonly Gen<ImmutableArray<ClothDemand>> Demands = Gen.Select(
            Gen.Int[4, 320],
            Gen.Int[4, 160],
            Gen.Int[1, 90],
            Gen.Bool
        )
        .Array[1, 5]
        .Select(rows =>
            rows.Select((row, i) => new ClothDemand(
                    new($"piece/A{i + 1}"),
                    $"A{i + 1}",
                    Length.Inches(new(row.Item1, 8)),
                    Length.Inches(new(row.Item2, 8)),
                    row.Item3,
                    row.Item4
                ))
                .ToImmutableArray()
        );

    [Fact]
    public void LinesAddUpToTheDemandAndToTheCloth() =>
        Demands.Sample(
            demand =>
            {
                var problem = new ClothProblem(new("cloth/A"), "A", ["any"], null, ClothTerms.Usual, demand, 1, CutGoal.ByTheInch);
                var plan = FirstFit.Plan(problem).Value!;
                var lines = CutInstructions.Lines(plan);
                var said = demand.ToDictionary(d => d.Label, _ => 0);
                foreach (var line in lines.Where(line => line.Strip is not null))
                {
                    Count(line.Say, said);
                }

                Assert.Equal(demand.ToDictionary(d => d.Label, d => d.Count), said);
                Assert.Equal(plan.Cut, lines[^1].Used);
                var heights = lines.Where(line => line.Strip is not null).Select(line => line.Strip!.Height).ToArray();
                Assert.Equal(heights.OrderDescending(), heights);
                Assert.All(lines, line => Assert.NotEmpty(Catalog.English.Say(line.Say)));
            },
            iter: 300
        );

    private static void Count(Message message, Dictionary<string, int> said)
    {
        if (message.Slots.TryGetValue("label", out var label))
        {
            said[(string)label] += (int)message.Slots["count"];
        }

        foreach (var value in message.Slots.Values)
        {
            if (value is Message inner)
            {
                Count(inner, said);
            }
            else if (value is ImmutableArray<Message> list)
            {
                foreach (var item in list)
                {
                    Count(item, said);
                }
            }
        }
    }
}
