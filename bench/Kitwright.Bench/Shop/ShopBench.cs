using System.Diagnostics;
using System.Globalization;

namespace Kitwright.Bench.Shop;

/// <summary>What somebody in the shop waits for, measured at the real server; each figure beside its limit, as CSV.</summary>
internal static class ShopBench
{
    private const string Steps = "/api/quilts/lantern-steps";
    private const int Repeats = 5;

    public static async Task<int> Run()
    {
        using var shop = await ServedShop.Start();
        using var client = new HttpClient { BaseAddress = shop.Address };
        Console.WriteLine($"# {Path.GetRelativePath(ServedShop.Root(), ServedShop.Program())}");
        Console.WriteLine("figure,value,unit,limit,kept");
        Line("first page after the start", shop.FirstPage.TotalMilliseconds, "ms", 2_000);
        Line("plan of the log cabin, warm", await Median(client, $"{Steps}/plan?colorway=Harbor%20hearth"), "ms", 500);
        Line("booklet with its plan", await Median(client, $"{Steps}/booklet?colorway=Harbor%20hearth"), "ms", 2_000);
        Line("six ways to a size, planned and checked, warm", await Sizes(client), "ms", 2_000);
        var edits = await DrawingEdit.Measure(shop.Address);
        Line($"edit of a block of 29 patches, median of {edits.Length}", edits[edits.Length / 2], "ms", 100);
        Line($"edit of a block of 29 patches, p95 of {edits.Length}", edits[(int)Math.Ceiling(0.95 * edits.Length) - 1], "ms", 100);
        foreach (var (columns, rows) in ((int, int)[])[(8, 9), (18, 20)])
        {
            var (patches, switches, pans) = await ColorwaySwitch.Measure(shop.Address, columns, rows);
            Array.Sort(switches);
            Array.Sort(pans);
            Line($"colorway of {patches.ToString(CultureInfo.InvariantCulture)} patches, median of {switches.Length}", switches[switches.Length / 2], "ms", 50);
            Line($"colorway of {patches.ToString(CultureInfo.InvariantCulture)} patches, p95 of {switches.Length}", switches[(int)Math.Ceiling(0.95 * switches.Length) - 1], "ms", 50);
            Line($"pan over {patches.ToString(CultureInfo.InvariantCulture)} patches, median of {pans.Length}", pans[pans.Length / 2], "ms", 50);
            Line($"pan over {patches.ToString(CultureInfo.InvariantCulture)} patches, p95 of {pans.Length}", pans[(int)Math.Ceiling(0.95 * pans.Length) - 1], "ms", 50);
        }

        Line("server memory at once", shop.Memory().Now, "MB", 300);
        // It tidies up when it is left alone.
        await Task.Delay(TimeSpan.FromSeconds(20));
        var (now, files, highest) = shop.Memory();
        Line("server memory at rest", now, "MB", 300);
        Line("of that pages of program files", files, "MB", 300);
        Line("server memory at its highest", highest, "MB", 300);
        return 0;
    }

    // A size of its own each time, so that no plan is remembered.
    private static async Task<double> Sizes(HttpClient client)
    {
        var times = new List<double>();
        for (var i = 0; i <= Repeats; i++)
        {
            var clock = Stopwatch.StartNew();
            await client.GetByteArrayAsync(new Uri($"/quilts/ostrel-bay-stars/sizes?target={60 + (3 * i)}x{80 + (5 * i)}", UriKind.Relative));
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        return times.Skip(1).Order().ElementAt(Repeats / 2);
    }

    private static async Task<double> Median(HttpClient client, string path)
    {
        // Once for the compiler.
        await client.GetByteArrayAsync(new Uri(path, UriKind.Relative));
        var times = new List<double>();
        for (var i = 0; i < Repeats; i++)
        {
            var clock = Stopwatch.StartNew();
            await client.GetByteArrayAsync(new Uri(path, UriKind.Relative));
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        return times.Order().ElementAt(Repeats / 2);
    }

    private static void Line(string figure, double value, string unit, double limit) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\"{figure}\",{value:0},{unit},{limit:0},{(value <= limit ? "yes" : "no")}"));
}
