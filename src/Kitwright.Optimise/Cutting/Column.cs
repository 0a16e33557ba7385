using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>One way to cut a strip, as a column of the master program: its height and what it yields.</summary>
/// <param name="Pieces">Indices of the pieces it yields, each once.</param>
/// <param name="Copies">How many of each.</param>
internal sealed record Column(StripPattern Pattern, ImmutableArray<int> Pieces, ImmutableArray<int> Copies)
{
    public int Height => Pattern.Height;

    public static Column Of(StripGrid grid, StripPattern pattern)
    {
        var cells = pattern.Cells.AsSpan();
        Span<int> pieces = cells.Length <= 64 ? stackalloc int[cells.Length] : new int[cells.Length];
        Span<int> copies = cells.Length <= 64 ? stackalloc int[cells.Length] : new int[cells.Length];
        var kinds = 0;
        foreach (var cell in cells)
        {
            var piece = grid.Ways[cell.Way].Piece;
            var at = kinds;
            for (; at > 0 && pieces[at - 1] >= piece; at--) { }

            if (at < kinds && pieces[at] == piece)
            {
                copies[at] += cell.Times;
                continue;
            }

            pieces[at..kinds].CopyTo(pieces[(at + 1)..]);
            copies[at..kinds].CopyTo(copies[(at + 1)..]);
            (pieces[at], copies[at]) = (piece, cell.Times);
            kinds++;
        }

        return new(pattern, [.. pieces[..kinds]], [.. copies[..kinds]]);
    }

    /// <summary>The column of so many of each way, with no more copies of a piece than are wanted.</summary>
    public static Column Proper(StripGrid grid, ReadOnlySpan<int> timesOfWay, ReadOnlySpan<int> wanted)
    {
        var cells = new PatternCell[timesOfWay.Length - timesOfWay.Count(0)];
        var count = ProperCells(grid, timesOfWay, wanted, cells);
        return OfCells(grid, cells.AsSpan(0, count));
    }

    /// <summary>The cells of that column, as many as are returned.</summary>
    public static int ProperCells(StripGrid grid, ReadOnlySpan<int> timesOfWay, ReadOnlySpan<int> wanted, Span<PatternCell> cells)
    {
        var count = 0;
        for (var way = 0; way < timesOfWay.Length; way++)
        {
            if (timesOfWay[way] > 0)
            {
                var piece = grid.Ways[way].Piece;
                var room = wanted[piece];
                for (var i = 0; i < count; i++)
                {
                    room -= grid.Ways[cells[i].Way].Piece == piece ? cells[i].Times : 0;
                }

                if (room > 0)
                {
                    cells[count++] = new(way, Math.Min(room, timesOfWay[way]));
                }
            }
        }

        return count;
    }

    /// <param name="cells">Ascending by way.</param>
    public static Column OfCells(StripGrid grid, ReadOnlySpan<PatternCell> cells)
    {
        // Ways are in the order of height, so the last one gives the strip its own.
        var height = cells.IsEmpty ? 0 : grid.Ways[cells[^1].Way].Height;
        return Of(grid, new(height, [.. cells]));
    }

    /// <summary>How often the column can be cut before it yields more than is wanted.</summary>
    public int MostTimes(ReadOnlySpan<int> wanted)
    {
        var most = int.MaxValue;
        for (var i = 0; i < Pieces.Length; i++)
        {
            most = Math.Min(most, wanted[Pieces[i]] / Copies[i]);
        }

        return most;
    }

    /// <summary>How often the column is cut at most where all of a piece are to come from it alone.</summary>
    public int EnoughTimes(ReadOnlySpan<int> wanted)
    {
        var enough = 0;
        for (var i = 0; i < Pieces.Length; i++)
        {
            enough = Math.Max(enough, (wanted[Pieces[i]] + Copies[i] - 1) / Copies[i]);
        }

        return enough;
    }

    /// <summary>Columns are the same where they yield the same at the same height, however the pieces lie.</summary>
    public bool Equals(Column? other) =>
        other is not null
        && Height == other.Height
        && Pieces.AsSpan().SequenceEqual(other.Pieces.AsSpan())
        && Copies.AsSpan().SequenceEqual(other.Copies.AsSpan());

    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Height);
        for (var i = 0; i < Pieces.Length; i++)
        {
            hash.Add(Pieces[i]);
            hash.Add(Copies[i]);
        }

        return hash.ToHashCode();
    }
}
