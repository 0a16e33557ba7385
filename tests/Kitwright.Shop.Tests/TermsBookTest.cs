using Kitwright.Cutting;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Shop.Tests;

public sealed class TermsBookTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public async Task Terms_are_the_usual_ones_until_they_are_set()
    {
        using var shop = new OpenedShop();
        AssertEqual(ShopTerms.Usual, await shop.Store.Terms.Read(Cancel));
        var metric = ShopTerms.Usual with
        {
            Cloth = ShopTerms.Usual.Cloth with
            {
                UsableWidth = Length.Millimeters(1_060),
                Increments = [Length.Millimeters(100), Length.Millimeters(250)],
                Table = new(4, 6, Length.Millimeters(10)) { RulerLength = Length.Millimeters(600) },
            },
            Kits = ShopTerms.Usual.Kits with { LoadLoss = Length.Millimeters(25) },
            SpareStrips = 2,
            OneLengthPerFabric = true,
            Currency = "EUR",
            SoldBy = LengthUnit.Meter,
            Words = TradeWords.British,
            Techniques = ShopTerms.Usual.Techniques.Add("half-square", "eight-trimmed").Add("row", "strip-set"),
            Goal = CutGoal.ByTheInch,
            LeastLeftover = Length.Millimeters(80),
            Order = CutOrder.With(CutOrder.Usual, 0, CutAim.Cuts),
        };
        Assert.Empty((await shop.Store.Terms.Set(ShopTerms.Usual, Cancel)).Findings);
        Assert.Empty((await shop.Store.Terms.Set(metric, Cancel)).Findings);
        shop.Reopen();
        AssertEqual(metric, await shop.Store.Terms.Read(Cancel));
    }

    /// <summary>One layer and no squaring is what holds where nothing is said; with a ruler it has been said.</summary>
    [Fact]
    public async Task A_ruler_alone_is_kept()
    {
        using var shop = new OpenedShop();
        var terms = ShopTerms.Usual with { Cloth = ShopTerms.Usual.Cloth with { Table = TableTerms.Usual } };
        Assert.Empty((await shop.Store.Terms.Set(terms, Cancel)).Findings);
        shop.Reopen();
        AssertEqual(terms, await shop.Store.Terms.Read(Cancel));
        Assert.Empty((await shop.Store.Terms.Set(ShopTerms.Usual, Cancel)).Findings);
        AssertEqual(ShopTerms.Usual, await shop.Store.Terms.Read(Cancel));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public async Task A_ruler_that_cannot_be_is_not_kept(int inches)
    {
        using var shop = new OpenedShop();
        var bad = ShopTerms.Usual with { Cloth = ShopTerms.Usual.Cloth with { Table = TableTerms.Usual with { RulerLength = Length.Inches(inches) } } };
        var finding = Assert.Single((await shop.Store.Terms.Set(bad, Cancel)).Findings);
        Assert.Equal(("terms.ruler", "terms/ruler-length"), (finding.Rule, finding.Place));
        Assert.Equal("Give its length: above 0 and at most 100 in.", Catalog.English.Say(finding.Remedy));
        AssertEqual(ShopTerms.Usual, await shop.Store.Terms.Read(Cancel));
    }

    [Fact]
    public async Task Terms_that_cannot_be_are_not_kept()
    {
        using var shop = new OpenedShop();
        var bad = ShopTerms.Usual with
        {
            Cloth = ShopTerms.Usual.Cloth with { CrossTrim = Length.Inches(40), Increments = [], Straightening = -Length.Inch, Stages = 5 },
            SpareStrips = -1,
            Currency = "dollars",
            Techniques = ShopTerms.Usual.Techniques.Add("goose", "by-magic"),
            Order = [CutAim.Cuts, CutAim.Cuts],
        };
        Assert.Equal(
            ["terms.length", "terms.no-increment", "terms.trim", "terms.spare-strips", "terms.stages", "terms.order", "terms.currency", "terms.technique"],
            (await shop.Store.Terms.Set(bad, Cancel)).Findings.Select(f => f.Rule)
        );
        AssertEqual(ShopTerms.Usual, await shop.Store.Terms.Read(Cancel));
    }

    // Arrays compare by their cells here, which records do not do by themselves.
    private static void AssertEqual(ShopTerms expected, ShopTerms actual)
    {
        Assert.Equal(expected.Cloth.Increments, actual.Cloth.Increments);
        Assert.Equal(expected.Techniques, actual.Techniques);
        Assert.Equal(expected.Order, actual.Order);
        Assert.Equal(
            expected,
            actual with
            {
                Cloth = actual.Cloth with { Increments = expected.Cloth.Increments },
                Techniques = expected.Techniques,
                Order = expected.Order,
            }
        );
    }
}
