using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Kitwright.Checking.Sheets;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests.Sheets;

/// <summary>
/// Every number of a plan of sheets moved up and down by one unit (1 for a count, 1/64 for a length or cost) is found,
/// unless it stands below with the reason why a plan may differ in it and still be right.
/// </summary>
public sealed class SheetEveryNumberTest
{
    /// <summary>What may be moved without harm, and why; none may stand here in vain.</summary>
    private static readonly (string Path, string Reason)[] Free =
    [
        (@"^/problem/sheets/\d+/(width|height|count)$", "a larger or more frequent sheet still holds its pieces, and the bound rounds to the same"),
        (@"^/problem/terms/folds/\d$", "sheets are cut in one layer whatever a roll might be"),
        (@"^/problem/terms/trimAlong$", "what is taken from a roll once is not in its strips"),
        (@"^/problem/terms/stages$", "a plan of two stages is one of three, and the bound rounds to the same"),
        (@"^/proof/duals/\d+$", "the bound rounds up to the same multiple of the cost unit"),
        (@"^/proof/scale$", "as the duals"),
        (@"^/proof/work$", "for the record only"),
    ];

    public static TheoryData<string> Samples { get; } = [nameof(SheetSamples.Quarters), nameof(SheetSamples.Roll), nameof(SheetSamples.Short)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_number_moved_by_one_unit_is_found(string sample)
    {
        var plan = (SheetPlan)typeof(SheetSamples).GetProperty(sample)!.GetValue(null)!;
        var root = JsonNode.Parse(JsonSerializer.Serialize(plan, PlanJson.Options))!;
        Assert.Empty(SheetChecker.Check(root.Deserialize<SheetPlan>(PlanJson.Options)!));
        var missed = new SortedSet<string>(StringComparer.Ordinal);
        var moved = 0;
        foreach (var (path, set) in Numbers(root, "", root))
        {
            foreach (var up in new[] { true, false })
            {
                var restore = set(up);
                moved++;
                if (IsAccepted(root) && !Free.Any(free => Regex.IsMatch(path, free.Path)))
                {
                    missed.Add($"{path} {(up ? "up" : "down")}");
                }

                restore();
            }
        }

        Assert.True(moved > 50, $"{moved} numbers");
        Assert.Equal([], missed);
    }

    [Fact]
    public void None_is_free_in_vain()
    {
        var used = new HashSet<string>();
        foreach (var plan in new[] { SheetSamples.Quarters, SheetSamples.Roll, SheetSamples.Short })
        {
            var root = JsonNode.Parse(JsonSerializer.Serialize(plan, PlanJson.Options))!;
            foreach (var (path, set) in Numbers(root, "", root))
            {
                foreach (var up in new[] { true, false })
                {
                    var restore = set(up);
                    used.UnionWith(Free.Where(free => Regex.IsMatch(path, free.Path) && IsAccepted(root)).Select(free => free.Path));
                    restore();
                }
            }
        }

        Assert.Equal([], Free.Select(free => free.Path).Except(used));
    }

    private static bool IsAccepted(JsonNode root)
    {
        try
        {
            return SheetChecker.Check(root.Deserialize<SheetPlan>(PlanJson.Options)!).IsEmpty;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    /// <summary>Where each number stands, and how to move it; the outcome of moving restores it.</summary>
    private static IEnumerable<(string Path, Func<bool, Action> Move)> Numbers(JsonNode node, string path, JsonNode root) =>
        node switch
        {
            JsonObject o => o.Where(p => p.Value is not null).ToList().SelectMany(p => Of(p.Value!, $"{path}/{p.Key}", value => o[p.Key] = value)),
            JsonArray a => Enumerable.Range(0, a.Count).SelectMany(i => Of(a[i]!, $"{path}/{i}", value => a[i] = value)),
            _ => [],
        };

    private static IEnumerable<(string, Func<bool, Action>)> Of(JsonNode child, string path, Action<JsonNode> put)
    {
        if (child is not JsonValue value)
        {
            return Numbers(child, path, child);
        }

        Func<bool, JsonNode>? moved = value.GetValueKind() switch
        {
            JsonValueKind.Number => up => JsonValue.Create(value.GetValue<long>() + (up ? 1 : -1)),
            JsonValueKind.String when RationalText.TryParse(value.GetValue<string>(), out var x) => up =>
                JsonValue.Create(LengthText.Mixed(x + new Rational(up ? 1 : -1, 64))),
            _ => null,
        };
        return moved is null
            ? []
            :
            [
                (
                    path,
                    up =>
                    {
                        put(moved(up));
                        return () => put(value.DeepClone());
                    }
                ),
            ];
    }
}
