using System.Collections.Immutable;

namespace Kitwright.Cutting.Sheets;

/// <summary>Takes out what is cut beyond the demand, and draws strips and sub-cuts in to what they hold.</summary>
public static class SheetSurplus
{
    public static ImmutableArray<CutSheets> Remove(SheetGrid grid, IEnumerable<CutSheets> sheets)
    {
        var kept = sheets.Where(s => s.Times > 0).ToList();
        var over = new long[grid.Pieces.Length];
        foreach (var (pattern, times) in kept)
        {
            foreach (var (piece, copies) in pattern.Cells())
            {
                over[piece] += (long)times * copies;
            }
        }

        for (var piece = 0; piece < over.Length; piece++)
        {
            var surplus = over[piece] - grid.Pieces[piece].Count;
            if (surplus <= 0)
            {
                continue;
            }

            var yields = kept.Select(s => s.Pattern.Yield(piece)).ToList();
            for (var at = 0; at < yields.Count && surplus > 0; at++)
            {
                var (pattern, times) = kept[at];
                // All layers of a folded strip are cut at once: what is over in them stays.
                var most = Math.Min(yields[at], surplus) / pattern.Layers * pattern.Layers;
                if (most == 0)
                {
                    continue;
                }

                var touched = (int)Math.Min(times, surplus / most);
                kept[at] = new(Without(pattern, piece, (int)most / pattern.Layers), touched);
                surplus -= touched * most;
                if (times > touched)
                {
                    kept.Add(new(pattern, times - touched));
                    yields.Add(yields[at]);
                }
            }
        }

        return [.. kept.Select(s => s with { Pattern = Tight(grid, s.Pattern) }).Where(s => !s.Pattern.Strips.IsEmpty)];
    }

    /// <summary>The pattern without so many copies of a piece in one layer.</summary>
    private static SheetPattern Without(SheetPattern pattern, int piece, int copies)
    {
        var strips = ImmutableArray.CreateBuilder<PatternStrip>();
        foreach (var strip in pattern.Strips.SelectMany(s => Enumerable.Repeat(s with { Times = 1 }, s.Times)))
        {
            var cuts = ImmutableArray.CreateBuilder<PatternSubCut>();
            foreach (var cut in strip.SubCuts.SelectMany(c => Enumerable.Repeat(c with { Times = 1 }, c.Times)))
            {
                var stack = ImmutableArray.CreateBuilder<StackCell>();
                foreach (var cell in cut.Stack)
                {
                    var fewer = cell.Piece == piece ? Math.Min(copies, cell.Times) : 0;
                    copies -= fewer;
                    if (cell.Times > fewer)
                    {
                        stack.Add(cell with { Times = cell.Times - fewer });
                    }
                }

                if (stack.Count > 0)
                {
                    cuts.Add(cut with { Stack = stack.ToImmutable() });
                }
            }

            if (cuts.Count > 0)
            {
                strips.Add(strip with { SubCuts = cuts.ToImmutable() });
            }
        }

        return pattern with { Strips = strips.ToImmutable() };
    }

    /// <summary>Every sub-cut as wide and every strip as high as what it holds; equal neighbors as one.</summary>
    public static SheetPattern Tight(SheetGrid grid, SheetPattern pattern)
    {
        int Along(StackCell cell) =>
            pattern.Along == cell.Turned ? grid.Pieces[cell.Piece].Width : grid.Pieces[cell.Piece].Height;
        int Across(StackCell cell) =>
            pattern.Along == cell.Turned ? grid.Pieces[cell.Piece].Height : grid.Pieces[cell.Piece].Width;

        var strips = pattern.Strips.Select(strip =>
        {
            var cuts = Runs(
                strip.SubCuts.Select(cut => cut with { Width = cut.Stack.Max(Along) }).OrderByDescending(Key, StringComparer.Ordinal),
                (x, y) => Key(x) == Key(y),
                (x, y) => x with { Times = x.Times + y.Times }
            );
            return new PatternStrip(cuts.Max(cut => cut.Stack.Sum(cell => cell.Times * Across(cell))), strip.Times, cuts);
        });
        return pattern with
        {
            Strips = Runs(
                strips.OrderByDescending(strip => strip.Height).ThenBy(Key, StringComparer.Ordinal),
                (x, y) => x.Height == y.Height && Key(x) == Key(y),
                (x, y) => x with { Times = x.Times + y.Times }
            ),
        };
    }

    private static string Key(PatternStrip strip) => string.Join(';', strip.SubCuts.Select(cut => $"{cut.Times}*{Key(cut)}"));

    private static string Key(PatternSubCut cut) =>
        $"{cut.Width:D8}:" + string.Join(',', cut.Stack.Select(cell => $"{cell.Times}x{cell.Piece}{(cell.Turned ? "t" : "")}"));

    private static ImmutableArray<T> Runs<T>(IEnumerable<T> items, Func<T, T, bool> same, Func<T, T, T> join)
    {
        var runs = new List<T>();
        foreach (var item in items)
        {
            if (runs.Count > 0 && same(runs[^1], item))
            {
                runs[^1] = join(runs[^1], item);
            }
            else
            {
                runs.Add(item);
            }
        }

        return [.. runs];
    }
}
