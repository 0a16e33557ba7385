using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// How often the ruler is laid down for the first cuts: those that part strips and lengths from the cloth, and those along
/// the selvage within a length. A cut of n ruler lengths counts n, rounded up.
/// </summary>
/// <remarks>
/// Cuts right across the cloth lie as strips do in their layers: the usable width, halved by the fold where there is one.
/// Lengths lie in one layer once they are cut off, and strips beside their pieces reach across what is left of the width.
/// </remarks>
public static class RulerPlacings
{
    /// <summary>0 where nothing is said of the table.</summary>
    public static long Of(ClothPlan plan)
    {
        if (plan.Terms.Table is not { } table)
        {
            return 0;
        }

        var across = Times(Across(plan.Terms, table), table);
        return (across * (plan.Strips.Sum(strip => (long)strip.Times) + plan.Sections.Length))
            + plan.Sections.Sum(section =>
                (Times(section.Length, table) * section.Cuts.Sum(cut => (long)cut.Times))
                + (Times(Beside(plan.Terms, section), table) * section.Beside.Sum(strip => (long)strip.Times))
            );
    }

    /// <summary>How long a cut right across the cloth is as it lies.</summary>
    internal static Length Across(ClothTerms terms, TableTerms table) => table.Layers > 1 ? terms.UsableWidth * new Rational(1, 2) : terms.UsableWidth;

    private static Length Beside(ClothTerms terms, LengthwiseSection section) =>
        section.Cuts.Aggregate(terms.UsableWidth, (left, cut) => left - (cut.Width * cut.Times));

    private static long Times(Length cut, TableTerms table) => (long)(cut / table.RulerLength).Ceiling();
}
