using System.Collections.Immutable;

namespace Kitwright.Cutting.Sheets;

/// <summary>One way to cut a sheet, in units of a <see cref="SheetGrid"/>.</summary>
/// <param name="Along">Whether the first cuts go down the height.</param>
/// <param name="Layers">Of every strip.</param>
public sealed record SheetPattern(int Sheet, bool Along, int Layers, ImmutableArray<PatternStrip> Strips)
{
    /// <summary>How many of each piece of the grid it yields.</summary>
    public int[] Yields(int pieces)
    {
        var yields = new int[pieces];
        foreach (var (piece, copies) in Cells())
        {
            yields[piece] += copies;
        }

        return yields;
    }

    /// <summary>How many it yields of one piece.</summary>
    public int Yield(int piece)
    {
        var yield = 0;
        foreach (var cell in Cells())
        {
            yield += cell.Piece == piece ? cell.Copies : 0;
        }

        return yield;
    }

    /// <summary>What it yields, cell by cell: a piece may come more than once.</summary>
    public IEnumerable<(int Piece, int Copies)> Cells()
    {
        foreach (var strip in Strips)
        {
            foreach (var cut in strip.SubCuts)
            {
                foreach (var cell in cut.Stack)
                {
                    yield return (cell.Piece, Layers * strip.Times * cut.Times * cell.Times);
                }
            }
        }
    }

    public int Height => Strips.Sum(strip => strip.Height * strip.Times);
}

/// <summary>Equal strips, in one layer.</summary>
public sealed record PatternStrip(int Height, int Times, ImmutableArray<PatternSubCut> SubCuts);

/// <summary>Equal cuts across a strip.</summary>
public sealed record PatternSubCut(int Width, int Times, ImmutableArray<StackCell> Stack);

/// <summary>Equal pieces one above the other in a sub-cut.</summary>
/// <param name="Turned">Of the sheet as it lies, width and height exchanged. <c>default</c> is no piece at all.</param>
public readonly record struct StackCell(int Piece, bool Turned, int Times);

/// <summary>Equal sheets cut alike.</summary>
public sealed record CutSheets(SheetPattern Pattern, int Times);
