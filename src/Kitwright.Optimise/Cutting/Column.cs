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
        var yields = pattern
            .Cells.GroupBy(cell => grid.Ways[cell.Way].Piece)
            .OrderBy(cells => cells.Key)
            .Select(cells => (Piece: cells.Key, Copies: cells.Sum(cell => cell.Times)))
            .ToList();
        return new(pattern, [.. yields.Select(y => y.Piece)], [.. yields.Select(y => y.Copies)]);
    }

    /// <summary>The pattern of these cells, with no more copies of a piece than are wanted.</summary>
    public static Column Proper(StripGrid grid, IEnumerable<PatternCell> cells, IReadOnlyList<int> wanted)
    {
        var left = new Dictionary<int, int>();
        var kept = new List<PatternCell>();
        foreach (var cell in cells)
        {
            var piece = grid.Ways[cell.Way].Piece;
            var room = left.TryGetValue(piece, out var rest) ? rest : wanted[piece];
            var times = Math.Min(cell.Times, room);
            left[piece] = room - times;
            kept.Add(cell with { Times = times });
        }

        return Of(grid, StripPattern.Of(grid, kept));
    }

    /// <summary>How often the column can be cut before it yields more than is wanted.</summary>
    public int MostTimes(IReadOnlyList<int> wanted)
    {
        var most = int.MaxValue;
        for (var i = 0; i < Pieces.Length; i++)
        {
            most = Math.Min(most, wanted[Pieces[i]] / Copies[i]);
        }

        return most;
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
