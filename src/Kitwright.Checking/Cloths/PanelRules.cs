using System.Numerics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// Cloth printed in panels: each strip comes from one panel, no panel gives more than its length, the kit's spare strips
/// have their room too, and what is bought is that many panels.
/// </summary>
internal static class PanelRules
{
    public static void Check(ClothPlan cloth, QuiltPlan plan, FindingList findings)
    {
        var length = plan.Fabrics.FirstOrDefault(f => f.Letter == cloth.Letter)?.PanelLength;
        if (length is null && cloth.Terms.Panel is null && cloth.Panels is null)
        {
            return;
        }

        if (length is not { Sign: > 0 } panel || cloth.Terms.Panel != panel || cloth.Panels is not { IsDefault: false } panels || !cloth.Sections.IsEmpty || cloth.Terms.Table is { SquareEvery: > 0 })
        {
            findings.Add("check.panel.terms", cloth.Id.Value);
            return;
        }

        var strips = cloth.Strips.ToLookup(s => s.Id);
        var given = new Dictionary<PathId, BigInteger>();
        BigInteger count = 0,
            spares = 0;
        var spare = LengthRules.SpareHeight(cloth);
        foreach (var same in panels)
        {
            if (same.Times <= 0 || same.Spares < 0 || same.Strips.IsDefault || same.Strips.Any(s => s.Times <= 0 || !strips.Contains(s.Strip)))
            {
                findings.Add("check.panel.terms", cloth.Id.Value);
                return;
            }

            var used = same.Strips.Aggregate(spare * same.Spares, (sum, s) => sum + (strips[s.Strip].First().Height * s.Times));
            if (used > panel)
            {
                findings.Add("check.panel.full", cloth.Id.Value, Say.Inches(used), Say.AtMost(Say.Inches(panel)));
            }

            foreach (var strip in same.Strips)
            {
                given[strip.Strip] = given.GetValueOrDefault(strip.Strip) + ((BigInteger)strip.Times * same.Times);
            }

            count += same.Times;
            spares += (BigInteger)same.Spares * same.Times;
        }

        foreach (var strip in cloth.Strips.Where(s => given.GetValueOrDefault(s.Id) != s.Times))
        {
            findings.Add("check.panel.strips", strip.Id.Value, Say.Count(given.GetValueOrDefault(strip.Id)), Say.Count(strip.Times));
        }

        if (spare * new Rational(spares, 1) != cloth.Margin)
        {
            findings.Add("check.panel.spares", cloth.Id.Value, Say.Inches(spare * new Rational(spares, 1)), Say.Inches(cloth.Margin));
        }

        if (panel * new Rational(count, 1) != cloth.Purchase)
        {
            findings.Add("check.cloth.purchase", cloth.Id.Value, Say.Inches(cloth.Purchase), Say.Inches(panel * new Rational(count, 1)));
        }
    }
}
