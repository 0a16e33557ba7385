using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Settings;

/// <summary>
/// One of the eight positions of a square, as a cell of a setting states it: mirrored left to right first, then turned
/// by quarters counterclockwise. They form the dihedral group of order 8.
/// </summary>
public readonly record struct Position
{
    public Position(int turns, bool mirror) => (Turns, Mirror) = (((turns % 4) + 4) % 4, mirror);

    /// <summary>Quarter turns counterclockwise, 0 to 3.</summary>
    public int Turns { get; }
    public bool Mirror { get; }

    public static Position Identity => default;

    /// <summary>The turns, then the mirrored ones.</summary>
    public static ImmutableArray<Position> All { get; } =
        [.. from mirror in new[] { false, true } from turns in Enumerable.Range(0, 4) select new Position(turns, mirror)];

    /// <summary>This one first, and then the other: a mirror reverses the turns before it.</summary>
    public Position Then(Position next) =>
        new(next.Mirror ? next.Turns - Turns : next.Turns + Turns, next.Mirror ^ Mirror);

    public Position Inverse() => Mirror ? this : new(-Turns, false);

    /// <summary>About the origin.</summary>
    public Motion Motion() =>
        (Mirror ? new Motion(-1, 0, 0, 1, 0, 0) : Geometry.Motion.Identity).Then(Geometry.Motion.QuarterTurns(Turns));

    /// <summary>Where a cell of an n by n square comes to lie; rows count from the top, both from 0.</summary>
    public (int Row, int Column) Move(int row, int column, int n)
    {
        if (Mirror)
        {
            column = n - 1 - column;
        }

        for (var i = 0; i < Turns; i++)
        {
            (row, column) = (n - 1 - column, row);
        }

        return (row, column);
    }
}
