using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Kitwright.Accuracy;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Optimise.Pressing;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Bench.Sewing;

/// <summary>
/// Piecing and pressing of every block of the book, of a top of ten thousand patches, and ten thousand simulated quilts:
/// wall-clock times, and for blocks what the process itself computed, each the least of five runs after a first.
/// </summary>
internal static class SewingBench
{
    private const int Slowest = 8;
    private const int Runs = 5;

    public static int Run()
    {
        var times = BlockBook
            .All.Select(block => (block.Id, Milliseconds: Time(() => Piece(Of(block, 1, 1))), Processor: Processor(() => Piece(Of(block, 1, 1)))))
            .OrderByDescending(t => t.Processor)
            .ToArray();
        foreach (var (id, milliseconds, processor) in times.Take(Slowest))
        {
            Say($"block {id}: piecing and pressing {milliseconds:0.0} ms, processor time {processor:0.0} ms");
        }

        Say($"{times.Length} blocks: mean {times.Average(t => t.Milliseconds):0.0} ms, over 50 ms: {times.Count(t => t.Milliseconds > 50)}; processor time mean {times.Average(t => t.Processor):0.0} ms, over 50 ms: {times.Count(t => t.Processor > 50)}");
        var large = Of(BlockBook.Find("nine-patch")!, 34, 33);
        Say($"top of {34 * 33 * 9} patches, piecing and pressing: {Time(() => Piece(large)):0} ms");
        var quilt = QuiltFile.Read(File.ReadAllText(Path.Combine(Root(), "examples", "quilts", "lantern-steps.json"))).Value!;
        var plan = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        Say($"10000 quilts of {quilt.Name} on {Environment.ProcessorCount} cores: {Time(() => QuiltAccuracy.Sew(plan, Hands.Usual, 10_000)):0} ms");
        foreach (var path in Directory.GetFiles(Path.Combine(Root(), "examples", "quilts"), "*.json").Order(StringComparer.Ordinal))
        {
            var demo = QuiltFile.Read(File.ReadAllText(path)).Value!;
            Say($"ways of making the units of {demo.Name} compared: {Time(() => TechniqueComparison.Of(demo, null, [], PlanOptions.Usual, FirstFit.Plan)):0} ms");
        }

        return 0;
    }

    private static void Piece(Quilt quilt)
    {
        if (Pieced(quilt) is { } pieced)
        {
            Kitwright.Pressing.PressingPlan.Of(
                pieced.Sewing,
                pieced.Pieces,
                [],
                Layout.Of(quilt).Blocks,
                quilt.Seam,
                Kitwright.Pressing.PressingRules.Usual,
                CpSatPressing.Solver()
            );
        }
    }

    private static Pieced? Pieced(Quilt quilt)
    {
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        return PiecingPlan.Of(quilt, Layout.Of(quilt), letters, ClothTerms.Usual).Value;
    }

    private static Quilt Of(BookBlock block, int columns, int rows) =>
        new(
            block.Name,
            null,
            LengthUnit.Inch,
            Length.Inches(0, 1, 4),
            Length.Inches(0, 1, 8),
            null,
            [.. block.Roles, new("binding", "binding", null), new("backing", "backing", null)],
            [block.At(Length.Inches(12))],
            new(SettingKind.Straight, columns, rows, [[new(block.Id, 0, false)]], null),
            [],
            new("binding", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("backing", Length.Inches(4), Length.Inches(0, 1, 2), null),
            ImmutableSortedDictionary<string, string>.Empty,
            []
        );

    /// <summary>The quickest of a few runs: what else the machine does is no part of it.</summary>
    private static double Time(Action work)
    {
        work();
        return Enumerable.Range(0, Runs).Min(_ => Once(work));
    }

    /// <summary>Of the whole process, its collector included: on a busy machine the clock says little.</summary>
    private static double Processor(Action work) =>
        Enumerable
            .Range(0, Runs)
            .Min(_ =>
            {
                var before = Environment.CpuUsage.TotalTime;
                work();
                return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
            });

    private static double Once(Action work)
    {
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed.TotalMilliseconds;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
