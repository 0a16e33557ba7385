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
        var plates = Plate.All(grid);
        var left = grid.Sheets.Select(sheet => sheet.Count ?? int.MaxValue).ToArray();
        var full = new List<CutSheets>();
        var open = new List<OpenSheet>();
        foreach (var piece in Enumerable.Range(0, grid.Pieces.Length).OrderByDescending(i => Math.Max(grid.Pieces[i].Width, grid.Pieces[i].Height)))
        {
            var wanted = grid.Counts[piece];
            foreach (var sheet in open)
            {
                wanted -= sheet.Fill(piece, wanted);
            }

            while (wanted > 0 && Choose(grid, plates, left, piece) is ({ } plate, var way))
            {
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

                var sheet = new OpenSheet(plate, grid.IsOpen ? way.Across : plate.Up);
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
    private static (Plate Plate, Lay Way)? Choose(SheetGrid grid, ImmutableArray<Plate> plates, int[] left, int piece)
    {
        (Plate, Lay)? best = null;
        (Int128 Cost, long Pieces) least = default;
        foreach (var plate in plates.Where(p => left[p.Sheet] > 0 && p.Layers == 1))
        {
            foreach (var way in plate.Ways.Where(w => w.Piece == piece))
            {
                var pieces = (long)(plate.Across / way.Along) * (grid.IsOpen ? 1 : plate.Up / way.Across);
                Int128 cost = grid.Sheets[plate.Sheet].Cost * (grid.IsOpen ? way.Across : 1L);
                if (best is null || cost * least.Pieces < least.Cost * pieces)
                {
                    (best, least) = ((plate, way), (cost, pieces));
                }
            }
        }

        return best;
    }

    private sealed class OpenSheet(Plate plate, int room)
    {
        private readonly List<PatternStrip> strips = [];

        public SheetPattern Pattern => new(plate.Sheet, plate.Along, plate.Layers, [.. strips]);

        /// <summary>Strips of a piece as long as there is room; returns how many pieces that gives.</summary>
        public int Fill(int piece, int wanted)
        {
            var given = 0;
            foreach (var way in plate.Ways.Where(w => w.Piece == piece && w.Across <= room).OrderByDescending(w => (plate.Across / w.Along) * (room / w.Across)))
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
