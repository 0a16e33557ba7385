using System.Numerics;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;

namespace Kitwright.Checking.Sheets;

/// <summary>Cost and counts of cuts, counted again from the tree.</summary>
internal static class SheetFigureRules
{
    public static void Check(SheetPlan plan, FindingList findings)
    {
        BigInteger sheets = 0,
            strips = 0,
            subCuts = 0,
            pieces = 0;
        foreach (var sheet in plan.Cuts)
        {
            sheets += sheet.Times;
            foreach (var strip in sheet.Strips)
            {
                var times = (BigInteger)sheet.Times * strip.Times;
                strips += times;
                foreach (var sub in strip.SubCuts)
                {
                    subCuts += times * sub.Times;
                    pieces += sub.Stack.Aggregate(BigInteger.Zero, (sum, p) => sum + p.Times) * times * sub.Times * strip.Layers;
                }
            }
        }

        Compare("sheets", plan.Figures.Sheets, plan.Problem.Sheets is [{ Height: null }] ? 1 : sheets);
        Compare("strips", plan.Figures.Strips, strips);
        Compare("sub-cuts", plan.Figures.SubCuts, subCuts);
        Compare("pieces", plan.Figures.Pieces, pieces);
        if (plan.Cost != Cost(plan))
        {
            findings.Add("check.sheet.cost", "cost");
        }

        void Compare(string figure, long claimed, BigInteger counted)
        {
            if (claimed != counted)
            {
                findings.Add("check.sheet.figure", "figures", Say.Count(claimed), Say.Count(counted), ("figure", figure));
            }
        }
    }

    /// <summary>Of the sheets touched; of a cloth of open length, of the height of all strips.</summary>
    public static Rational Cost(SheetPlan plan)
    {
        var cost = Rational.Zero;
        foreach (var cut in plan.Cuts)
        {
            var sheet = plan.Problem.Sheets.First(s => s.Id == cut.Sheet);
            cost += sheet.Height is null
                ? cut.Strips.Aggregate(Rational.Zero, (sum, strip) => sum + (strip.Height.InInches * strip.Times)) * sheet.Cost
                : sheet.Cost * cut.Times;
        }

        return cost;
    }
}
