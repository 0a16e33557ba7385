using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// Every number of a plan matters: moved up or down by one unit (1 for a count, 1/64 in for a length or coordinate), it
/// is found, unless it stands below with the reason why a plan may differ in it and still be right.
/// </summary>
public sealed partial class EveryNumberTest
{
    private static readonly Rational Unit = new(1, 64);

    /// <summary>Both ways in a long run; otherwise up and down by turns.</summary>
    private static readonly bool Long = Environment.GetEnvironmentVariable("KITWRIGHT_LONG") == "1";

    /// <summary>What may be moved without harm, and why; none may stand here in vain.</summary>
    private static readonly (string Path, string Reason)[] Free =
    [
        (@"^/sewing/recipes/\d+/verbs/\d+/line/\d$", "a line moved along itself, or a waste cut moved away from its seam"),
        ("^/rulerStep$", "a coarser step allows more excess than there is"),
        ("^/binding/allowance$", "a choice; the strips still reach"),
        ("^/backing/usableWidth$", "one panel is wide enough either way"),
        ("^/backing/seam$", "a single panel has no seam"),
        (@"^/cloths/\d+/terms/usableWidth$", "strips that are not full still hold their pieces, and the bound rounds to the same sum"),
        (@"^/cloths/\d+/terms/crossTrim$", "as the width"),
        (@"^/cloths/\d+/terms/increments/\d$", "another increment gives the purchase"),
        (@"^/cloths/\d+/terms/minimumCut$", "more is bought than the minimum"),
        (@"^/cloths/\d+/terms/stages$", "a plan of two stages is one of three"),
        (@"^/cloths/\d+/proof/scale$", "a bound by area has no duals to scale"),
        (@"^/cloths/\d+/proof/work$", "for the record only"),
    ];

    /// <summary>A number where it stands in the document, with its neighbors one unit up and down.</summary>
    private sealed record Number(string Path, JsonNode Parent, string Key, JsonNode Up, JsonNode Down)
    {
        public JsonNode? Value
        {
            get => Parent is JsonArray array ? array[Index] : Parent[Key];
            set
            {
                if (Parent is JsonArray array)
                {
                    array[Index] = value;
                }
                else
                {
                    Parent[Key] = value;
                }
            }
        }

        private int Index => int.Parse(Key, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Each_number_moved_by_one_unit_is_found()
    {
        var root = JsonNode.Parse(Json.Of(Sampler.Plan))!;
        var numbers = new List<Number>();
        Collect(root, "", "", root, numbers);
        Assert.InRange(numbers.Count, 700, 5000);
        var missed = new SortedSet<string>(StringComparer.Ordinal);
        var used = new HashSet<string>();
        for (var i = 0; i < numbers.Count; i++)
        {
            var number = numbers[i];
            var stated = number.Value;
            foreach (var moved in Long ? [number.Up, number.Down] : new[] { i % 2 == 0 ? number.Up : number.Down })
            {
                number.Value = moved;
                if (Accepted(root) is { } plan)
                {
                    var free = Free.Where(f => Regex.IsMatch(number.Path, f.Path)).ToArray();
                    used.UnionWith(free.Select(f => f.Path));
                    if (free.Length == 0 || !IsHarmless(number.Path, plan))
                    {
                        missed.Add($"{number.Path} = {moved}");
                    }
                }
            }

            number.Value = stated;
        }

        Assert.Equal([], missed);
        if (Long)
        {
            Assert.Equal([], Free.Select(f => f.Path).Except(used));
        }
    }

    /// <summary>The plan, where nothing is found. Some numbers are refused on reading: a motion that is not rigid is none.</summary>
    private static QuiltPlan? Accepted(JsonNode root)
    {
        try
        {
            var plan = root.Deserialize<QuiltPlan>(PlanJson.Options)!;
            return PlanChecker.Check(plan).Findings.IsEmpty ? plan : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static void Collect(JsonNode node, string path, string key, JsonNode parent, List<Number> numbers)
    {
        switch (node)
        {
            case JsonObject o:
                foreach (var (name, child) in o.Where(p => p.Value is not null && p.Key is not ("hash" or "engine" or "say")))
                {
                    Collect(child!, $"{path}/{name}", name, node, numbers);
                }

                break;
            case JsonArray a:
                for (var i = 0; i < a.Count; i++)
                {
                    Collect(a[i]!, $"{path}/{i}", $"{i}", node, numbers);
                }

                break;
            case JsonValue v when v.GetValueKind() == JsonValueKind.Number:
                numbers.Add(new(path, parent, key, v.GetValue<long>() + 1, v.GetValue<long>() - 1));
                break;
            case JsonValue v when v.GetValueKind() == JsonValueKind.String && SurdText.TryParse(v.GetValue<string>(), out var x):
                numbers.Add(new(path, parent, key, (x + (Surd)Unit).ToString(), (x - (Surd)Unit).ToString()));
                break;
        }
    }

    /// <summary>Of a line: a seam on the same line as before, or a waste cut with no less allowance than before.</summary>
    private static bool IsHarmless(string path, QuiltPlan moved)
    {
        if (LinePath().Match(path) is not { Success: true } match)
        {
            return true;
        }

        int recipe = int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture),
            verb = int.Parse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture);
        return (Sampler.Plan.Sewing.Recipes[recipe].Verbs[verb], moved.Sewing.Recipes[recipe].Verbs[verb]) switch
        {
            (Sew b, Sew a) => SameLine(b.Line, a.Line),
            // Of the sampler's cuts only those of the corners throw something away: it lies to the left.
            (CutAlong { Left: null } b, CutAlong a) => b.Line.SideOf(a.Line.From) >= 0 && b.Line.SideOf(a.Line.To) >= 0,
            _ => false,
        };
    }

    private static bool SameLine(Line p, Line q) => p.SideOf(q.From) == 0 && p.SideOf(q.To) == 0;

    [GeneratedRegex(@"^/sewing/recipes/(\d+)/verbs/(\d+)/line/\d$")]
    private static partial Regex LinePath();
}
