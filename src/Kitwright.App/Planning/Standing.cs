using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Quilts;
using Kitwright.Shop;

namespace Kitwright.App.Planning;

/// <summary>How things stand in the shop's database: its quilts, its shelf and its terms.</summary>
public sealed record Standing(ImmutableArray<ShelfQuilt> Quilts, Shelf Shelf, ShopTerms Terms)
{
    /// <summary>What every plan of the shop assumes.</summary>
    public PlanOptions Options => OptionsUnder(Terms);

    public static PlanOptions OptionsUnder(ShopTerms terms) =>
        new(terms.Cloth, terms.SpareStrips, terms.Goal, terms.OneLengthPerFabric, "normal")
        {
            Techniques = terms.Techniques,
            Order = terms.Order,
        };

    /// <summary>What a quilt by itself is planned under, without a shop: metric terms where it is planned in centimeters.</summary>
    public static PlanOptions OptionsFor(Quilt quilt) =>
        quilt.Units == LengthUnit.Centimeter ? OptionsUnder(ShopTerms.UsualMetric) : PlanOptions.Usual;

    public static async Task<Standing> Of(ShopStore store, CancellationToken cancel)
    {
        var quilts = ImmutableArray.CreateBuilder<ShelfQuilt>();
        foreach (var line in await store.Projects.All(cancel))
        {
            if (await store.Projects.Find(line.Slug, cancel) is { } project && QuiltFile.Read(project.Current.Json).Value is { } quilt)
            {
                quilts.Add(new(line.Slug, quilt));
            }
        }

        return new(quilts.ToImmutable(), await store.Stock.Shelf(cancel), await store.Terms.Read(cancel));
    }
}
