using System.Diagnostics;
using System.Globalization;

namespace Kitwright.Bench.Shop;

/// <summary>The real server in a process of its own, on a fresh database with the demo shop.</summary>
internal sealed class ServedShop : IDisposable
{
    private readonly Process process;
    private readonly string folder;

    private ServedShop(Process process, string folder, Uri address, TimeSpan firstPage)
    {
        (this.process, this.folder) = (process, folder);
        (Address, FirstPage) = (address, firstPage);
    }

    public Uri Address { get; }

    /// <summary>From the start of the process to the whole of the first page.</summary>
    public TimeSpan FirstPage { get; }

    /// <summary>Resident memory, in MB: now, what of that are pages of program files, and at its highest.</summary>
    public (long Now, long Files, long Highest) Memory()
    {
        var lines = File.ReadAllLines($"/proc/{process.Id}/status");
        return (Of("VmRSS:"), Of("RssFile:"), Of("VmHWM:"));

        long Of(string name) => long.Parse(lines.First(line => line.StartsWith(name, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    public static async Task<ServedShop> Start()
    {
        var folder = Directory.CreateTempSubdirectory("kitwright-bench-").FullName;
        // The first start makes the database; what a shop meets every morning is the second.
        (await Start(folder)).Stop();
        return await Start(folder);
    }

    private static async Task<ServedShop> Start(string folder)
    {
        var clock = Stopwatch.StartNew();
        var process = Process.Start(
            new ProcessStartInfo("dotnet", [Program(), "serve", "--port", "0", "--database", Path.Combine(folder, "shop.db")])
            {
                RedirectStandardOutput = true,
                // As ./dev run starts it.
                Environment =
                {
                    ["DOTNET_GCgen0size"] = "0x800000",
                    ["MALLOC_ARENA_MAX"] = "1",
                    ["MALLOC_TRIM_THRESHOLD_"] = "131072",
                    ["MALLOC_MMAP_THRESHOLD_"] = "131072",
                },
            }
        )!;
        var said = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The server ended at once.");
        var address = new Uri(said.Split(' ').First(word => word.StartsWith("http://", StringComparison.Ordinal)));
        using var client = new HttpClient();
        await client.GetStringAsync(address);
        return new(process, folder, address, clock.Elapsed);
    }

    private void Stop()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    public void Dispose()
    {
        Stop();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>What <c>./dev run</c> starts: published with code made ahead, or else as it was built.</summary>
    public static string Program()
    {
        var ahead = Path.Combine(Root(), "artifacts", "ahead", "run", "kitwright.dll");
        return File.Exists(ahead) ? ahead : Path.Combine(Root(), "src", "Kitwright.App", "bin", "Release", "net10.0", "kitwright.dll");
    }

    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The benchmark must run inside the repository.");
    }
}
