using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Shop.Ledger;
using Xunit;

namespace Kitwright.Shop.Tests;

/// <summary>A shop in a file of its own, on a clock that stands still until it is moved.</summary>
internal sealed class OpenedShop : IDisposable
{
    /// <summary>An empty shop with its tables, made once and copied for each test.</summary>
    private static readonly Lazy<byte[]> Tables = new(Make);

    private readonly string folder = Directory.CreateTempSubdirectory("kitwright-shop-").FullName;

    public OpenedShop()
    {
        File.WriteAllBytes(Path, Tables.Value);
        Store = ShopStore.Open(Path, Clock);
    }

    public StoppedClock Clock { get; } = new();

    public ShopStore Store { get; private set; }

    public string Path => System.IO.Path.Combine(folder, "shop.db");

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Closes the shop and opens the same file again.</summary>
    public void Reopen()
    {
        Store.Dispose();
        Store = ShopStore.Open(Path, Clock);
    }

    /// <summary>Two fabrics, three bolts: b1 and b2 of F, b3 of G; lengths in inches.</summary>
    public static Shelf Shelf(int b1 = 360, int b2 = 180, int b3 = 90) =>
        new(
            [Fabric("F"), Fabric("G")],
            [new("b1", "F", "L1", Length.Inches(b1)), new("b2", "F", "L2", Length.Inches(b2)), new("b3", "G", "L1", Length.Inches(b3))]
        );

    public static Fabric Fabric(string number, long price = 1299) =>
        new(number, number + " name", Length.Inches(44), price, "#3a5f8c", new(PrintKind.Dots, "#ffffff", 7))
        {
            PutUp = Length.Yards(12),
            Direction = PrintDirection.OneWay,
            RepeatAlong = Length.Inches(12, 3, 8),
            RepeatAcross = Length.Inches(6),
            PanelLength = Length.Inches(24),
            TwoSided = true,
        };

    public async Task Stock() =>
        Assert.True((await Store.Stock.Import(Guid.NewGuid(), "Wren", Shelf(), dryRun: false, Cancel)).Good);

    public async Task<Booked> Book(params BookingLine[] lines)
    {
        var booked = await Store.Stock.Book(new(Guid.NewGuid(), "Wren", [.. lines]), Cancel);
        Assert.Empty(booked.Findings);
        return booked.Value!;
    }

    public async Task<Length> OnHand(string bolt) => (await Store.Stock.Shelf(Cancel)).Bolts.Single(b => b.Id == bolt).OnHand;

    public void Dispose()
    {
        Store.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private static byte[] Make()
    {
        var folder = Directory.CreateTempSubdirectory("kitwright-shop-");
        var path = System.IO.Path.Combine(folder.FullName, "shop.db");
        ShopStore.Open(path, TimeProvider.System).Dispose();
        var bytes = File.ReadAllBytes(path);
        folder.Delete(recursive: true);
        return bytes;
    }

    internal sealed class StoppedClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2031, 4, 5, 9, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
