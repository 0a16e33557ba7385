using System.Collections.Immutable;

namespace Kitwright.Settings;

/// <summary>
/// All that makes one repeat of n by n cells from another without making it a different setting: shifts of the repeat,
/// turns, and mirrors where the block allows them. It acts on arrangements: a look for each cell, row by row.
/// </summary>
public sealed class RepeatGroup
{
    public RepeatGroup(int n, Looks looks)
    {
        (Side, Looks) = (n, looks);
        Elements = [.. from mover in looks.Movers from shift in Enumerable.Range(0, n * n) select ElementOf(mover, shift)];
    }

    /// <summary>Cells each way.</summary>
    public int Side { get; }

    public int Cells => Side * Side;

    public Looks Looks { get; }

    public ImmutableArray<RepeatElement> Elements { get; }

    private RepeatElement ElementOf(Position mover, int shift)
    {
        var to = new int[Cells];
        for (var cell = 0; cell < to.Length; cell++)
        {
            var (row, column) = mover.Move(cell / Side, cell % Side, Side);
            to[cell] = ((row + (shift / Side)) % Side * Side) + ((column + (shift % Side)) % Side);
        }

        return new(mover, shift, [.. to], [.. Enumerable.Range(0, Looks.Count).Select(look => Looks.Moved(look, mover))]);
    }
}

/// <summary>One element of the group.</summary>
/// <param name="Mover">What it does to the direction of things.</param>
/// <param name="Shift">The shift after it: rows times n plus columns.</param>
/// <param name="To">Where each cell goes.</param>
/// <param name="Look">What each look becomes.</param>
public sealed record RepeatElement(Position Mover, int Shift, ImmutableArray<int> To, ImmutableArray<int> Look)
{
    /// <summary>An arrangement as it lies after the move.</summary>
    public byte[] Apply(ReadOnlySpan<byte> arrangement)
    {
        var moved = new byte[arrangement.Length];
        for (var cell = 0; cell < moved.Length; cell++)
        {
            moved[To[cell]] = (byte)Look[arrangement[cell]];
        }

        return moved;
    }

    public bool Keeps(ReadOnlySpan<byte> arrangement)
    {
        for (var cell = 0; cell < arrangement.Length; cell++)
        {
            if (arrangement[To[cell]] != Look[arrangement[cell]])
            {
                return false;
            }
        }

        return true;
    }
}
