using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Cutting;

/// <summary>
/// A cutting problem in whole units: what every method works on, so that no rounding ever decides what fits.
/// </summary>
/// <param name="Unit">The length of one unit; every piece is a whole number of them.</param>
/// <param name="Width">What one strip holds, in units (rounded down: a piece that fits, fits the whole units).</param>
/// <param name="Pieces">Equal pieces merged, whatever they become later.</param>
/// <param name="Ways">How pieces may lie in a strip, by height, then by width.</param>
/// <param name="Heights">The distinct heights of the ways, ascending: the candidate strip heights.</param>
public sealed record StripGrid(
    Length Unit,
    int Width,
    ImmutableArray<GridPiece> Pieces,
    ImmutableArray<Way> Ways,
    ImmutableArray<int> Heights
)
{
    public static StripGrid Of(Length unit, int width, ImmutableArray<GridPiece> pieces)
    {
        var ways = pieces
            .SelectMany(Lay)
            .Where(way => way.Width <= width)
            .OrderBy(way => way.Height)
            .ThenBy(way => way.Width)
            .ThenBy(way => way.Piece)
            .ToImmutableArray();
        return new(unit, width, pieces, ways, [.. ways.Select(way => way.Height).Distinct()]);
    }

    private static IEnumerable<Way> Lay(GridPiece piece, int index)
    {
        yield return new(index, piece.Width, piece.Height, Turned: false);
        if (piece.MayTurn && piece.Width != piece.Height)
        {
            yield return new(index, piece.Height, piece.Width, Turned: true);
        }
    }

    /// <summary>So many spare strips, each of the least height from which any one of the pieces can be cut again.</summary>
    public Length Margin(int spareStrips) =>
        Unit * (Rational)((long)WaysOf.Select(ways => ways.Min(way => Ways[way].Height)).DefaultIfEmpty().Max() * spareStrips);

    /// <summary>How many pieces a pass of the blade across a strip gives: 2 where strips are folded.</summary>
    public int Fold { get; init; } = 1;

    /// <summary>No fewer strips hold the pieces, however narrow they lie.</summary>
    public long FewestStrips =>
        (Enumerable.Range(0, Pieces.Length).Sum(piece => (long)Pieces[piece].Count * WaysOf[piece].Min(way => Ways[way].Width)) + Width - 1) / Width;

    /// <summary>For each piece the indices of its ways.</summary>
    public ImmutableArray<ImmutableArray<int>> WaysOf { get; } =
        [
            .. Enumerable
                .Range(0, Ways.Length)
                .ToLookup(way => Ways[way].Piece)
                .OrderBy(ways => ways.Key)
                .Select(ways => ways.ToImmutableArray()),
        ];

    /// <summary>How many of each piece are wanted.</summary>
    public ImmutableArray<int> Counts { get; } = [.. Pieces.Select(piece => piece.Count)];

    /// <summary>What all wanted pieces are worth at these values, one a piece.</summary>
    public Int128 Worth(ReadOnlySpan<long> values)
    {
        var worth = Int128.Zero;
        for (var piece = 0; piece < values.Length; piece++)
        {
            worth += (Int128)values[piece] * Counts[piece];
        }

        return worth;
    }

    /// <summary>Pieces wanted in all.</summary>
    public long Count => Pieces.Sum(piece => (long)piece.Count);

    /// <summary>The area of all pieces in square units.</summary>
    public Int128 Area =>
        Pieces.Aggregate(Int128.Zero, (sum, p) => sum + ((Int128)p.Width * p.Height * p.Count));
}

/// <summary>A size of piece, in units.</summary>
/// <param name="Count">How many are wanted of all its demands together; more than 0.</param>
/// <param name="Demands">The demands of the problem that ask for this size, as indices.</param>
public sealed record GridPiece(int Width, int Height, int Count, bool MayTurn, ImmutableArray<int> Demands);

/// <summary>One way to lay a piece: <paramref name="Width"/> along the strip, <paramref name="Height"/> across it.</summary>
/// <param name="Piece">Index of the piece in the grid.</param>
public readonly record struct Way(int Piece, int Width, int Height, bool Turned);
