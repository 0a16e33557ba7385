using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>What whoever cuts a directional print must heed.</summary>
public static class PrintWords
{
    /// <summary>Null for cloth whose pieces may lie any way round.</summary>
    public static Message? Of(PlanFabric fabric) =>
        fabric.Direction switch
        {
            PrintDirection.OneWay => Message.Of("chart.print.one-way"),
            PrintDirection.TwoWay => Message.Of("chart.print.two-way"),
            _ => null,
        };

    /// <summary>How pieces are matched to the print; null where they are not.</summary>
    public static Message? OfMatch(ClothTerms terms) =>
        terms.Match is not { } match ? null
        : Message.Of(
            "chart.match",
            ("ways", match is { Along: not null, Across: not null } ? "both" : match.Along is null ? "across" : "along"),
            ("along", match.Along ?? Measure.Length.Zero),
            ("across", match.Across ?? Measure.Length.Zero)
        );

    /// <summary>Which strips are cut from which panels; nothing where the cloth is not printed in panels.</summary>
    public static IEnumerable<Message> OfPanels(ClothPlan plan)
    {
        if (plan.Panels is not { } panels || plan.Terms.Panel is not { } length)
        {
            yield break;
        }

        yield return Message.Of("chart.panels", ("panels", panels.Sum(panel => panel.Times)), ("length", length));
        var heights = plan.Strips.ToDictionary(strip => strip.Id, strip => strip.Height);
        var alike =
            from panel in panels
            where !panel.Strips.IsEmpty
            let strips = panel
                .Strips.GroupBy(strip => heights[strip.Strip], strip => strip.Times)
                .OrderByDescending(same => same.Key)
                .Select(same => Message.Of("chart.panel.strips", ("count", same.Sum()), ("height", same.Key)))
                .ToImmutableArray()
            group (panel.Times, Strips: strips) by string.Join(' ', strips.Select(strip => $"{strip.Slots["count"]} of {strip.Slots["height"]}")) into same
            select Message.Of("chart.panel", ("panels", same.Sum(panel => panel.Times)), ("strips", same.First().Strips));
        foreach (var say in alike)
        {
            yield return say;
        }

        if (panels.Where(panel => panel.Strips.IsEmpty).Sum(panel => panel.Times) is > 0 and var spare)
        {
            yield return Message.Of("chart.panel.spare", ("panels", spare));
        }
    }
}
