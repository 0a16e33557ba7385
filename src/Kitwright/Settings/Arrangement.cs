using System.Collections.Immutable;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>One setting of a repeat: the look of each cell, row by row from the upper left.</summary>
/// <param name="Kept">How many elements of the group keep it; more for what is more symmetric.</param>
/// <param name="Symmetry">How it looks when it is turned or mirrored about some center.</param>
public sealed record Arrangement(ImmutableArray<byte> Looks, int Kept, RepeatSymmetry Symmetry)
{
    public static Arrangement Of(byte[] looks, RepeatGroup group)
    {
        var keepers = group.Elements.Where(element => element.Keeps(looks)).Select(element => element.Mover).ToArray();
        return new([.. looks], keepers.Length, SymmetryOf(keepers.ToHashSet()));
    }

    /// <summary>The repeat as a quilt's setting holds it.</summary>
    public ImmutableArray<ImmutableArray<Cell>> CellsOf(string block, Looks looks)
    {
        var side = (int)Math.Sqrt(Looks.Length);
        return
        [
            .. Enumerable
                .Range(0, side)
                .Select(row =>
                    Enumerable
                        .Range(0, side)
                        .Select(column => looks.Each[Looks[(row * side) + column]])
                        .Select(position => new Cell(block, position.Turns, position.Mirror))
                        .ToImmutableArray()
                ),
        ];
    }

    private static RepeatSymmetry SymmetryOf(HashSet<Position> movers) =>
        (movers.Contains(new(1, false)), movers.Any(m => m.Mirror), movers.Contains(new(2, false))) switch
        {
            (true, true, _) => RepeatSymmetry.Full,
            (true, false, _) => RepeatSymmetry.QuarterTurn,
            (false, true, true) => RepeatSymmetry.MirrorAndHalfTurn,
            (false, true, false) => RepeatSymmetry.Mirror,
            (false, false, true) => RepeatSymmetry.HalfTurn,
            _ => RepeatSymmetry.None,
        };
}

/// <summary>How a repeat comes back to itself, shifts aside.</summary>
public enum RepeatSymmetry
{
    None,
    Mirror,
    HalfTurn,
    MirrorAndHalfTurn,
    QuarterTurn,

    /// <summary>Quarter turns and mirrors.</summary>
    Full,
}
