using System.Runtime;

namespace Kitwright.App.Web;

/// <summary>
/// Gives memory back when the shop is quiet. The collector runs when somebody asks for more; after the plan of a large
/// quilt nobody may ask for hours, on a machine that has other work too.
/// </summary>
internal sealed class Tidying : BackgroundService
{
    private const long Quiet = 4 * 1024 * 1024;
    private const long Much = 24 * 1024 * 1024;

    private static readonly TimeSpan Step = TimeSpan.FromSeconds(5);

    protected override async Task ExecuteAsync(CancellationToken cancel)
    {
        using var timer = new PeriodicTimer(Step);
        var (before, tidied) = (0L, 0L);
        while (await timer.WaitForNextTickAsync(cancel))
        {
            var now = GC.GetTotalAllocatedBytes();
            if (IsDue(now, before, tidied))
            {
                GCSettings.LargeObjectHeapCompactionMode = GCLargeObjectHeapCompactionMode.CompactOnce;
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
                tidied = now;
            }

            before = now;
        }
    }

    /// <summary>Whether little was asked for since the last look, and much since the last tidying.</summary>
    /// <param name="now">Bytes asked for since the start: now, at the last look, and at the last tidying.</param>
    private static bool IsDue(long now, long before, long tidied) => now - before < Quiet && now - tidied > Much;
}
