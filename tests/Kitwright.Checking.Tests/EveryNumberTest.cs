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

    [Fact]
    public void Each_number_moved_by_one_unit_is_found()
    {
        var text = Json.Of(Sampler.Plan);
        var numbers = new List<(string Path, string Up, string Down)>();
        Collect(JsonNode.Parse(text)!, "", numbers);
        Assert.InRange(numbers.Count, 700, 5000);
        var missed = new SortedSet<string>(StringComparer.Ordinal);
        var used = new HashSet<string>();
        foreach (var (path, up, down) in numbers)
        {
            foreach (var moved in new[] { up, down })
            {
                if (IsAccepted(With(text, path, moved)))
                {
                    var free = Free.Where(f => Regex.IsMatch(path, f.Path)).ToArray();
                    used.UnionWith(free.Select(f => f.Path));
                    if (free.Length == 0 || (path.Contains("/line/", StringComparison.Ordinal) && !IsHarmless(text, path, moved)))
                    {
                        missed.Add($"{path} = {moved}");
                    }
                }
            }
        }

        Assert.Equal([], missed);
        Assert.Equal([], Free.Select(f => f.Path).Except(used));
    }

    /// <summary>Some numbers are refused on reading already: a motion that is not rigid is no motion.</summary>
    private static bool IsAccepted(string text)
    {
        try
        {
            return PlanChecker.Check(Json.Read(text)).Findings.IsEmpty;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static void Collect(JsonNode node, string path, List<(string, string, string)> numbers)
    {
        switch (node)
        {
            case JsonObject o:
                foreach (var (name, child) in o.Where(p => p.Value is not null && p.Key is not ("hash" or "engine" or "say")))
                {
                    Collect(child!, $"{path}/{name}", numbers);
                }

                break;
            case JsonArray a:
                for (var i = 0; i < a.Count; i++)
                {
                    Collect(a[i]!, $"{path}/{i}", numbers);
                }

                break;
            case JsonValue v when v.GetValueKind() == JsonValueKind.Number:
                numbers.Add((path, $"{v.GetValue<long>() + 1}", $"{v.GetValue<long>() - 1}"));
                break;
            case JsonValue v when v.GetValueKind() == JsonValueKind.String && SurdText.TryParse(v.GetValue<string>(), out var x):
                numbers.Add((path, $"\"{x + (Surd)Unit}\"", $"\"{x - (Surd)Unit}\""));
                break;
        }
    }

    private static string With(string text, string path, string value)
    {
        var root = JsonNode.Parse(text)!;
        var steps = path.Split('/')[1..];
        var node = root;
        foreach (var step in steps[..^1])
        {
            node = node is JsonArray a ? a[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : node[step]!;
        }

        var replacement = JsonNode.Parse(value);
        if (node is JsonArray array)
        {
            array[int.Parse(steps[^1], System.Globalization.CultureInfo.InvariantCulture)] = replacement;
        }
        else
        {
            node[steps[^1]] = replacement;
        }

        return root.ToJsonString(PlanJson.Options);
    }

    /// <summary>A seam on the same line as before, or a waste cut with no less allowance than before.</summary>
    private static bool IsHarmless(string text, string path, string moved)
    {
        var match = LinePath().Match(path);
        int recipe = int.Parse(match.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture),
            verb = int.Parse(match.Groups[2].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);
        var before = Sampler.Plan.Sewing.Recipes[recipe].Verbs[verb];
        var after = Json.Read(With(text, path, moved)).Sewing.Recipes[recipe].Verbs[verb];
        return (before, after) switch
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
