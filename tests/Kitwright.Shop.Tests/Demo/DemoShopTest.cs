using Kitwright.Measure;
using Kitwright.Shop.Demo;
using Kitwright.Shop.Ledger;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Shop.Tests.Demo;

public sealed class DemoShopTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public async Task The_demo_shop_is_put_in_once()
    {
        using var shop = new OpenedShop();
        Assert.True(await shop.Store.Demo.Seed(Cancel));
        var (projects, shelf) = (await shop.Store.Projects.All(Cancel), await shop.Store.Stock.Shelf(Cancel));
        shop.Reopen();
        Assert.False(await shop.Store.Demo.Seed(Cancel));
        Assert.Equal(DemoFiles.QuiltFiles().Length, projects.Length);
        Assert.True(shelf.Fabrics.Length >= 20);
        Assert.Equal(projects, await shop.Store.Projects.All(Cancel));
        Assert.Equal(shelf.Bolts, (await shop.Store.Stock.Shelf(Cancel)).Bolts);
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public async Task One_call_empties_it_and_leaves_what_is_the_shop_s_own()
    {
        using var shop = new OpenedShop();
        await shop.Store.Demo.Seed(Cancel);
        await shop.Stock();
        var own = (await shop.Store.Projects.Begin(Guid.NewGuid(), "Mine", "{}", Message.Plain("Begun"), "Wren", Cancel)).Value!;
        var demo = (await shop.Store.Projects.All(Cancel)).First(p => p.Demo);
        var current = (await shop.Store.Projects.Find(demo.Slug, Cancel))!.Current;
        await shop.Store.Projects.Keep(demo.Id, new(Guid.NewGuid(), current.Id, Message.Plain("x"), "x", "Wren"), Cancel);
        var bolt = (await shop.Store.Stock.Shelf(Cancel)).Bolts.First(b => b.Id != "b1").Id;
        await shop.Book(new(bolt, EntryKind.Cut, Length.Inch), new("b1", EntryKind.Cut, Length.Inch));
        var fabric = (await shop.Store.Stock.Shelf(Cancel)).Fabrics.First(f => f.Number is not ("F" or "G")).Number;
        OffcutLine Left(string of) => new(of, Length.Inches(5), Length.Inches(8), OffcutKind.Shelved, 2);
        Assert.True((await shop.Store.Offcuts.Book(new(Guid.NewGuid(), "Wren", [Left(fabric), Left("F")]), Cancel)).Good);
        Assert.True((await shop.Store.Offcuts.Book(new(Guid.NewGuid(), "Wren", [Left(fabric)]), Cancel)).Good);

        Assert.True(await shop.Store.Demo.Empty(Cancel));

        Assert.Equal(own.Project.Id, Assert.Single(await shop.Store.Projects.All(Cancel)).Id);
        var shelf = await shop.Store.Stock.Shelf(Cancel);
        Assert.Equal(["b1", "b2", "b3"], shelf.Bolts.Select(b => b.Id));
        Assert.Equal(["F", "G"], shelf.Fabrics.Select(f => f.Number));
        Assert.Equal(Length.Inches(359), shelf.Bolts[0].OnHand);
        Assert.Equal(("F", 2), (Assert.Single(shelf.Offcuts).Fabric, shelf.Offcuts[0].Count));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
        Assert.Equal(DemoState.Emptied, await shop.Store.Demo.State(Cancel));
        Assert.False(await shop.Store.Demo.Seed(Cancel));
        Assert.False(await shop.Store.Demo.Empty(Cancel));
    }
}
