using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// First fit decreasing height over sheets: strips of one kind of piece, from high to low, each onto the first sheet
/// with room. It always answers, at once, and its plans keep within any stages and any way of cutting last.
/// </summary>
internal static class FirstFitSheets
{
    public static ImmutableArray<CutSheets> Plan(SheetGrid grid)
    {
        ImmutableArray<Laying> plates = [.. Plate.All(grid).Where(plate => plate.Layers == 1).Select(plate => new Laying(plate))];
        var left = grid.Sheets.Select(sheet => sheet.Count ?? int.MaxValue).ToArray();
        var full = new List<CutSheets>();
        var open = new List<OpenSheet>();
        var order = Enumerable.Range(0, grid.Pieces.Length).OrderByDescending(i => Math.Max(grid.Pieces[i].Width, grid.Pieces[i].Height)).ToArray();
        var lowest = LowestFrom(grid, order);
        for (var at = 0; at < order.Length; at++)
        {
            var piece = order[at];
            var wanted = grid.Counts[piece];
            open.RemoveAll(sheet => sheet.IsFullFor(lowest[at], full));
            foreach (var sheet in open)
            {
                wanted -= sheet.Fill(piece, wanted);
                if (wanted == 0)
                {
                    break;
                }
            }

            while (wanted > 0 && Choose(grid, plates, left, piece) is ({ } laying, var way))
            {
                var plate = laying.Plate;
                var inStrip = plate.Across / way.Along;
                var perSheet = inStrip * (grid.IsOpen ? 1 : plate.Up / way.Across);
                var whole = Math.Min(left[plate.Sheet], wanted / (perSheet * plate.Layers));
                if (whole > 0)
                {
                    var strip = new PatternStrip(way.Across, perSheet / inStrip, [new(way.Along, inStrip, [new(piece, way.Turned, 1)])]);
                    full.Add(new(new(plate.Sheet, plate.Along, plate.Layers, [strip]), whole));
                    left[plate.Sheet] -= grid.IsOpen ? 0 : whole;
                    wanted -= whole * perSheet * plate.Layers;
                    continue;
                }

                var sheet = new OpenSheet(laying, grid.IsOpen ? way.Across : plate.Up);
                left[plate.Sheet] -= grid.IsOpen ? 0 : 1;
                wanted -= sheet.Fill(piece, wanted);
                if (!grid.IsOpen)
                {
                    open.Add(sheet);
                }
                else
                {
                    full.Add(new(sheet.Pattern, 1));
                }
            }
        }

        return [.. full, .. open.Select(sheet => new CutSheets(sheet.Pattern, 1))];
    }

    /// <summary>The plate on which the piece costs least, among sheets that are still there.</summary>
    private static (Laying Laying, Lay Way)? Choose(SheetGrid grid, ImmutableArray<Laying> plates, int[] left, int piece)
    {
        (Laying, Lay)? best = null;
        (Int128 Cost, long Pieces) least = default;
        foreach (var laying in plates.Where(p => left[p.Plate.Sheet] > 0))
        {
            var plate = laying.Plate;
            foreach (var way in laying.Of(piece))
            {
                var pieces = (long)(plate.Across / way.Along) * (grid.IsOpen ? 1 : plate.Up / way.Across);
                Int128 cost = grid.Sheets[plate.Sheet].Cost * (grid.IsOpen ? way.Across : 1L);
                if (best is null || cost * least.Pieces < least.Cost * pieces)
                {
                    (best, least) = ((laying, way), (cost, pieces));
                }
            }
        }

        return best;
    }

    /// <summary>For each place in the order the least side of the pieces from there on: less room than that is none.</summary>
    private static int[] LowestFrom(SheetGrid grid, int[] order)
    {
        var lowest = new int[order.Length];
        var least = int.MaxValue;
        for (var at = order.Length - 1; at >= 0; at--)
        {
            least = Math.Min(least, Math.Min(grid.Pieces[order[at]].Width, grid.Pieces[order[at]].Height));
            lowest[at] = least;
        }

        return lowest;
    }

    /// <summary>A plate with the ways of each piece at hand: there may be thousands.</summary>
    private sealed class Laying(Plate plate)
    {
        private readonly ILookup<int, Lay> ways = plate.Ways.ToLookup(way => way.Piece);

        public Plate Plate => plate;

        public IEnumerable<Lay> Of(int piece) => ways[piece];
    }

    private sealed class OpenSheet(Laying laying, int room)
    {
        private readonly Plate plate = laying.Plate;
        private readonly List<PatternStrip> strips = [];

        public SheetPattern Pattern => new(plate.Sheet, plate.Along, plate.Layers, [.. strips]);

        /// <summary>Whether no strip of so low a height fits any more; the sheet is then laid with those that are done.</summary>
        public bool IsFullFor(int height, List<CutSheets> full)
        {
            if (room >= height)
            {
                return false;
            }

            full.Add(new(Pattern, 1));
            return true;
        }

        /// <summary>Strips of a piece as long as there is room; returns how many pieces that gives.</summary>
        public int Fill(int piece, int wanted)
        {
            var given = 0;
            foreach (var way in laying.Of(piece).Where(w => w.Across <= room).OrderByDescending(w => (plate.Across / w.Along) * (room / w.Across)))
            {
                while (given < wanted && way.Across <= room)
                {
                    var copies = Math.Min(wanted - given, plate.Across / way.Along);
                    strips.Add(new(way.Across, 1, [new(way.Along, copies, [new(piece, way.Turned, 1)])]));
                    room -= way.Across;
                    given += copies;
                }
            }

            return given;
        }
    }
}
