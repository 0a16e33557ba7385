using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>What a shop's terms must be before they are kept.</summary>
public static class ShopTermsRules
{
    private const int MostSpareStrips = 20;
    private const int MostSquareEvery = 100;

    private static readonly Length Longest = Length.Yards(1_000);

    public static ImmutableArray<Finding> Findings(ShopTerms terms)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        Check("usable-width", terms.Cloth.UsableWidth, least: Length.Inch);
        Check("cross-trim", terms.Cloth.CrossTrim, least: Length.Zero);
        Check("straightening", terms.Cloth.Straightening, least: Length.Zero);
        Check("minimum-cut", terms.Cloth.MinimumCut, least: Length.Ticks(1));
        Check("load-loss", terms.Kits.LoadLoss, least: Length.Zero);
        Check("useful-remnant", terms.Kits.UsefulRemnant, least: Length.Zero);
        Check("least-leftover", terms.LeastLeftover, least: Length.Ticks(1));
        Check("put-up", terms.Kits.PutUp, least: Length.Yard);
        foreach (var increment in terms.Cloth.Increments)
        {
            Check("increments", increment, least: Length.Ticks(1));
        }

        if (terms.Cloth.Increments.IsDefaultOrEmpty)
        {
            findings.Add(Finding.Of("terms.no-increment", "terms/increments"));
        }

        if (terms.Cloth.CrossTrim >= terms.Cloth.UsableWidth)
        {
            findings.Add(Finding.Of("terms.trim", "terms/cross-trim", ("trim", terms.Cloth.CrossTrim), ("width", terms.Cloth.UsableWidth)));
        }

        if (terms.SpareStrips is < 0 or > MostSpareStrips)
        {
            findings.Add(Finding.Of("terms.spare-strips", "terms/spare-strips", ("strips", terms.SpareStrips), ("most", MostSpareStrips)));
        }

        if (terms.Cloth.Stages is not (2 or 3))
        {
            findings.Add(Finding.Of("terms.stages", "terms/stages", ("stages", terms.Cloth.Stages)));
        }

        if (terms.Cloth.Table is { } table)
        {
            Check("squaring-loss", table.SquaringLoss, least: Length.Zero);
            if (table.Layers is not (1 or 2 or 4) || table.SquareEvery is < 0 or > MostSquareEvery)
            {
                findings.Add(Finding.Of("terms.table", "terms/table", ("layers", table.Layers), ("every", table.SquareEvery), ("most", MostSquareEvery)));
            }

            if (table.RulerLength.Sign <= 0 || table.RulerLength > TableTerms.LongestRuler || !table.RulerLength.TryTicks(out _))
            {
                findings.Add(Finding.Of("terms.ruler", "terms/ruler-length", ("ruler", table.RulerLength), ("most", TableTerms.LongestRuler)));
            }
        }

        if (!CutOrder.IsWhole(terms.Order))
        {
            findings.Add(Finding.Of("terms.order", "terms/order"));
        }

        if (terms.SoldBy is not (LengthUnit.Yard or LengthUnit.Meter))
        {
            findings.Add(Finding.Of("terms.sold-by", "terms/sold-by"));
        }

        if (terms.Currency.Length != 3 || !terms.Currency.All(char.IsAsciiLetterUpper))
        {
            findings.Add(Finding.Of("terms.currency", "terms/currency", ("currency", terms.Currency)));
        }

        foreach (var (unit, technique) in terms.Techniques)
        {
            if (TechniqueBook.Kind(unit)?.Has(technique) != true)
            {
                findings.Add(Finding.Of("terms.technique", $"terms/techniques/{unit}", ("unit", unit), ("technique", technique)));
            }
        }

        return findings.ToImmutable();

        void Check(string field, Length length, Length least)
        {
            if (length < least || length > Longest || !length.TryTicks(out _))
            {
                findings.Add(Finding.Of("terms.length", $"terms/{field}", ("length", length), ("least", least), ("most", Longest)));
            }
        }
    }
}
