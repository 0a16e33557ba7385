using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>How cuts are made that are longer than the ruler, once for each cloth and way; nothing where it reaches.</summary>
public static class RulerWords
{
    // Through more layers the cut wanders (common practice, no source).
    private const int MostLayers = 4;

    /// <summary>Cuts right across the cloth.</summary>
    public static IEnumerable<Message> Across(ClothPlan plan) =>
        plan.Terms.Table is { } table && !(plan.Strips.IsEmpty && plan.Sections.IsEmpty)
            ? Say("chart.ruler.across", plan.Terms, table, RulerPlacings.Across(plan.Terms, table), Math.Min(table.Layers, 2))
            : [];

    /// <summary>Cuts along the selvage, as long as the longest length.</summary>
    public static IEnumerable<Message> Along(ClothPlan plan) =>
        plan.Terms.Table is { } table && !plan.Sections.IsEmpty
            ? Say("chart.ruler.along", plan.Terms, table, plan.Sections.Max(section => section.Length), 1)
            : [];

    private static IEnumerable<Message> Say(string key, ClothTerms terms, TableTerms table, Length cut, int layers)
    {
        if (cut > table.RulerLength)
        {
            yield return Message.Of(
                key,
                ("length", cut),
                ("ruler", table.RulerLength),
                ("folds", terms.Match is null ? Folds(cut, table.RulerLength, layers) : 0),
                ("again", layers > 1 ? "yes" : "no")
            );
        }
    }

    /// <summary>How often the cloth is folded until the ruler reaches; 0 where that is more layers than are cut well.</summary>
    private static int Folds(Length cut, Length ruler, int layers)
    {
        var folds = 0;
        for (; cut > ruler; cut *= new Rational(1, 2), layers *= 2)
        {
            folds++;
        }

        return layers > MostLayers ? 0 : folds;
    }
}
