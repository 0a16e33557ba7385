using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CsCheck;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>A plan file may come from anybody. Whatever it holds, it is answered with findings, and soon.</summary>
public sealed class HostilePlanTest
{
    /// <summary>Reads plans with holes, as a reader might that asks for less.</summary>
    private static readonly JsonSerializerOptions Lenient = new(PlanJson.Options)
    {
        RespectNullableAnnotations = false,
        RespectRequiredConstructorParameters = false,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
    };

    /// <summary>What a plan need not have, and where 0, no or the first of a few is right for the sampler.</summary>
    private static readonly string[] MayBeLeftOut =
    [
        "colorway", "batting", "picture", "outline", "shows", "left", "searched",
        "spare", "crossTrim", "minimumCut", "work", "trims", "surplus", "allowance", "seam",
        "turned", "counted", "across", "status", "toward", "kind", "grain", "lengthwise", "hasOwnReserve", "sections", "rounds", "package", "halvesOutside", "hand", "mirror"];

    [Fact]
    public void No_plan_at_all_is_a_finding() =>
        Assert.Equal(["check.plan.missing"], PlanChecker.Check(null!).Findings.Select(f => f.Rule));

    [Fact]
    public void A_plan_with_any_part_left_out_is_a_finding()
    {
        var text = Json.Of(Sampler.Plan);
        var places = new List<string[]>();
        var silent = new HashSet<string>();
        Collect(JsonNode.Parse(text)!, [], places);
        // One of each kind of place: the second strip has no other fields than the first.
        foreach (var place in places.DistinctBy(p => string.Join('/', p.Select(s => char.IsDigit(s[0]) ? "#" : s))))
        {
            var root = JsonNode.Parse(text)!;
            var parent = (JsonObject)At(root, place[..^1])!;
            parent.Remove(place[^1]);
            QuiltPlan plan;
            try
            {
                plan = root.Deserialize<QuiltPlan>(Lenient)!;
            }
            catch (Exception refused) when (refused is JsonException or NotSupportedException)
            {
                continue;
            }

            var findings = PlanChecker.Check(plan).Findings;
            if (findings.IsEmpty)
            {
                silent.Add(place[^1]);
            }

            Assert.All(findings, Mutants.InWords);
        }

        Assert.Equal([], silent.Except(MayBeLeftOut));
    }

    [Fact]
    public void Parts_of_a_plan_in_the_place_of_others_never_make_the_checker_fail()
    {
        var text = Json.Of(Sampler.Plan);
        var places = new List<string[]>();
        Collect(JsonNode.Parse(text)!, [], places);
        var byName = places.ToLookup(p => p[^1]);
        Gen.Select(Gen.Int[0, places.Count - 1], Gen.Int[0, int.MaxValue])
            .List[1, 4]
            .Sample(
                swaps =>
                {
                    var root = JsonNode.Parse(text)!;
                    foreach (var (to, from) in swaps)
                    {
                        var like = byName[places[to][^1]].ToArray();
                        var source = At(JsonNode.Parse(text)!, like[from % like.Length]);
                        // An earlier swap may have taken the place away.
                        if (At(root, places[to][..^1]) is JsonObject parent)
                        {
                            parent[places[to][^1]] = source?.DeepClone();
                        }
                    }

                    Judge(root.ToJsonString(PlanJson.Options));
                },
                iter: 300
            );
    }

    [Fact]
    public void Great_counts_do_not_overflow()
    {
        const int Many = int.MaxValue;
        var plan = Sampler.Plan with
        {
            Pieces = [.. Sampler.Plan.Pieces.Select(p => p with { Count = Many, Spare = Many })],
            Sewing = new([.. Sampler.Plan.Sewing.Recipes.Select(r => r with { Runs = Many })]),
            Cloths =
            [
                .. Sampler.Plan.Cloths.Select(c =>
                    c with
                    {
                        Demand = [.. c.Demand.Select(d => d with { Count = Many })],
                        Strips =
                        [
                            .. c.Strips.Select(s =>
                                s with
                                {
                                    Times = Many,
                                    SubCuts = [.. s.SubCuts.Select(u => u with { Times = Many, Stack = [u.Stack[0] with { Times = Many }] })],
                                }
                            ),
                        ],
                        Proof = c.Proof with { Scale = long.MaxValue, Duals = [.. c.Demand.Select(_ => long.MaxValue)] },
                    }
                ),
            ],
            Binding = Sampler.Plan.Binding with { Strips = Many },
            Backing = Sampler.Plan.Backing with { Panels = Many },
        };
        Assert.All(PlanChecker.Check(plan).Findings, Mutants.InWords);
        Assert.NotEmpty(PlanChecker.Check(plan).Findings);
    }

    [Fact]
    public void Turns_that_make_numbers_grow_end_in_a_finding()
    {
        // A turn by the angle of 3, 4 and 5: each one multiplies the denominators by five.
        Rational c = new(3, 5),
            s = new(4, 5);
        var turn = new Turn("unit", new Motion(c, -(Surd)s, s, c, 0, 0));
        var plan = Sampler.Plan.EditRecipe("block/four", r => r with { Verbs = [r.Verbs[0], .. Enumerable.Repeat<Verb>(turn, 100_000)] });
        Assert.Contains("check.too-much", PlanChecker.Check(plan).Findings.Select(f => f.Rule));
    }

    [Fact]
    public void Units_that_double_end_in_a_finding()
    {
        var size = Length.Inches(1);
        var recipes = ImmutableArray.CreateBuilder<Recipe>();
        recipes.Add(Doubled(0, size, size, [PlanDraft.TakeAt("unit", new("piece/A1"), 0, 0)]));
        for (var i = 1; i <= 36; i++)
        {
            var (wide, high) = (Power(i / 2 + i % 2), Power(i / 2));
            var across = i % 2 == 1;
            var half = (across ? wide : high) / 2;
            var line = across ? PlanDraft.Upright(half) : PlanDraft.Level(half);
            PathId unit = new($"unit/{i - 1}");
            recipes.Add(
                Doubled(
                    i,
                    wide,
                    high,
                    [
                        new Use("unit", unit, Motion.Identity),
                        new Use("next", unit, across ? Motion.Shift(half, 0) : Motion.Shift(0, half)),
                        .. PlanDraft.Join("unit", "next", line),
                    ]
                )
            );
        }

        var last = recipes[^1];
        recipes[^1] = last with { Shows = Recipe.WholeTop };
        Length width = Power(18);
        var square = Length.Inches(1, 1, 2);
        var plan = Sampler.Plan with
        {
            Sewing = new(recipes.ToImmutable()),
            Design = new(width, width, [], [], [new(new("frame/all"), "light", Polygon.Rectangle(0, 0, width, width))]),
            Pieces = [Sampler.Plan.Pieces[0] with { Width = square, Height = square }],
        };
        var findings = PlanChecker.Check(plan).Findings;
        Assert.Contains("check.too-much", findings.Select(f => f.Rule));
        Assert.DoesNotContain(findings, f => f.Rule is "check.sewing.unit-size" or "check.sewing.allowance");
    }

    private static Length Power(int exponent) => Length.Inches(1L << exponent);

    private static Recipe Doubled(int number, Length width, Length height, Verb[] verbs) =>
        new(
            new($"unit/{number}"),
            "double",
            [.. verbs],
            ["unit"],
            1,
            width + (PlanDraft.Seam * 2),
            height + (PlanDraft.Seam * 2),
            null,
            Message.Plain("double")
        );

    private static void Judge(string text)
    {
        QuiltPlan plan;
        try
        {
            plan = Json.Read(text);
        }
        catch (JsonException)
        {
            return;
        }

        Assert.All(PlanChecker.Check(plan).Findings, Mutants.InWords);
    }

    private static void Collect(JsonNode? node, string[] path, List<string[]> places)
    {
        if (node is JsonObject o)
        {
            foreach (var (name, child) in o.Where(p => p.Key != "do"))
            {
                places.Add([.. path, name]);
                // What a message says is not the checker's.
                if (child is not JsonObject message || !message.ContainsKey("say"))
                {
                    Collect(child, [.. path, name], places);
                }
            }
        }
        else if (node is JsonArray a)
        {
            for (var i = 0; i < a.Count; i++)
            {
                Collect(a[i], [.. path, $"{i}"], places);
            }
        }
    }

    private static JsonNode? At(JsonNode root, string[] path)
    {
        JsonNode? node = root;
        foreach (var step in path)
        {
            node = node switch
            {
                JsonArray a when int.Parse(step, System.Globalization.CultureInfo.InvariantCulture) is var i && i < a.Count => a[i],
                JsonObject o => o[step],
                _ => null,
            };
        }

        return node;
    }
}
