using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Fabrics;
using Kitwright.Shop.Ledger;
using Kitwright.Stock;
using Kitwright.Words;

namespace Kitwright.App.Planning;

/// <summary>What taking a stock file over does, or would do, in words.</summary>
public static class ImportWords
{
    public static Message Sum(StockImport import) =>
        import.ChangesNothing
            ? Message.Of("stock.import.nothing")
            : Message.Of(
                import.DryRun ? "stock.import.would" : "stock.import.did",
                ("fabrics", import.NewFabrics.Length),
                ("changed", import.ChangedFabrics.Length),
                ("received", import.Received.Length),
                ("counted", import.Counted.Length)
            );

    public static Message New(Fabric fabric) =>
        Message.Of(
            "stock.import.fabric",
            ("number", fabric.Number),
            ("name", fabric.Name),
            ("width", fabric.Width),
            ("price", PriceText.Of(fabric.PricePerYard)),
            ("printed", FabricWords.Facts(fabric).IsEmpty ? "no" : "yes"),
            ("how", FabricWords.Facts(fabric))
        );

    public static Message Changed(FabricChange change) =>
        Message.Of(
            "stock.import.changed",
            ("number", change.After.Number),
            ("name", change.After.Name),
            ("changes", Differences(change.Before, change.After).ToImmutableArray())
        );

    public static Message Received(Bolt bolt) =>
        Message.Of("stock.import.bolt", ("bolt", bolt.Id), ("fabric", bolt.Fabric), ("lot", bolt.Lot), ("length", bolt.OnHand));

    public static Message Counted(BoltCount count) =>
        Message.Of("stock.import.count", ("bolt", count.Bolt), ("record", count.OnRecord), ("file", count.Measured));

    private static IEnumerable<Message> Differences(Fabric before, Fabric after)
    {
        foreach (
            var (column, was, now) in ((StockColumn, string, string)[])
                [
                    (StockColumn.Name, before.Name, after.Name),
                    (StockColumn.Price, PriceText.Of(before.PricePerYard), PriceText.Of(after.PricePerYard)),
                    (StockColumn.Color, before.Color, after.Color),
                    (StockColumn.Print, KindOf(before), KindOf(after)),
                    (StockColumn.Second, before.Print.Second, after.Print.Second),
                    (StockColumn.Seed, Text(before.Print.Seed), Text(after.Print.Seed)),
                ]
        )
        {
            if (was != now)
            {
                yield return Message.Of("stock.import.was", ("column", StockColumns.NameOf(column)), ("before", was), ("after", now));
            }
        }

        if (before.Width != after.Width)
        {
            yield return Message.Of(
                "stock.import.was-wide",
                ("column", StockColumns.NameOf(StockColumn.Width)),
                ("before", before.Width),
                ("after", after.Width)
            );
        }

        if (before.PutUp != after.PutUp)
        {
            yield return Message.Of(
                "stock.import.put-up",
                ("known", after.PutUp is null ? "no" : "yes"),
                ("after", after.PutUp ?? Measure.Length.Zero)
            );
        }

        var how = FabricWords.Facts(after);
        if (!how.SequenceEqual(FabricWords.Facts(before)))
        {
            yield return Message.Of("stock.import.printed", ("printed", how.IsEmpty ? "no" : "yes"), ("how", how));
        }
    }

    private static string KindOf(Fabric fabric) => fabric.Print.Kind.ToString().ToLowerInvariant();

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
