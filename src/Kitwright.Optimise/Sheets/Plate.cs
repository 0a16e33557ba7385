using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Sheets;

/// <summary>A sheet as it lies for one way of the first cut: strips are <paramref name="Across"/> long and stacked up.</summary>
/// <param name="Across">What a strip holds, in one layer.</param>
/// <param name="Up">What all strips together hold; of open length, the highest strip.</param>
/// <param name="Layers">Of every strip.</param>
/// <param name="Ways">How pieces may lie on it.</param>
internal sealed record Plate(int Sheet, bool Along, int Across, int Up, int Layers, ImmutableArray<Lay> Ways)
{
    /// <summary>All plates of a problem: a sheet counts twice where its first cut may go either way.</summary>
    public static ImmutableArray<Plate> All(SheetGrid grid)
    {
        var plates = ImmutableArray.CreateBuilder<Plate>();
        for (var s = 0; s < grid.Sheets.Length; s++)
        {
            var sheet = grid.Sheets[s];
            if (sheet.Height is not { } height)
            {
                var highest = grid.Pieces.Max(p => p.MayTurn && p.Height <= sheet.Width ? Math.Max(p.Width, p.Height) : p.Height);
                plates.AddRange(grid.Terms.Folds.Order().Select(layers => Make(grid, s, along: false, sheet.Width / layers, highest, layers)));
                continue;
            }

            if (grid.Terms.First != FirstCut.Along)
            {
                plates.Add(Make(grid, s, along: false, sheet.Width, height, 1));
            }

            if (grid.Terms.First is FirstCut.Along or FirstCut.Either)
            {
                plates.Add(Make(grid, s, along: true, height, sheet.Width, 1));
            }
        }

        return [.. plates.Where(plate => !plate.Ways.IsEmpty && grid.Sheets[plate.Sheet].Count != 0)];
    }

    private static Plate Make(SheetGrid grid, int sheet, bool along, int across, int up, int layers)
    {
        var ways = new List<Lay>();
        for (var i = 0; i < grid.Pieces.Length; i++)
        {
            var piece = grid.Pieces[i];
            if (!piece.Sheets.Contains(sheet))
            {
                continue;
            }

            ways.Add(along ? new(i, piece.Height, piece.Width, false) : new(i, piece.Width, piece.Height, false));
            if (piece.MayTurn)
            {
                ways.Add(along ? new(i, piece.Width, piece.Height, true) : new(i, piece.Height, piece.Width, true));
            }
        }

        return new(
            sheet,
            along,
            across,
            up,
            layers,
            [.. ways.Where(w => w.Along <= across && w.Across <= up).OrderBy(w => w.Across).ThenBy(w => w.Along).ThenBy(w => w.Piece)]
        );
    }
}

/// <summary>One way to lay a piece: <paramref name="Along"/> the strip, <paramref name="Across"/> it.</summary>
internal readonly record struct Lay(int Piece, int Along, int Across, bool Turned);
