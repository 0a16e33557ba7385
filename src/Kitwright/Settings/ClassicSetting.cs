using System.Collections.Immutable;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>The log-cabin settings under the names that museums and quilters use.</summary>
/// <remarks>
/// Names: barn raising [IQM] [MCK] [MSU] [MAINE] [LHF]; straight furrow [LHF] [MAINE] [MSU] [SBAND]; light and dark [IQM]
/// [LHF], also sunshine and shadow [QTWIN]; streak of lightning [IQM] [MAINE] [HHA]. The sources name and show them;
/// which turn each cell takes is our own reading of the figures.
/// </remarks>
public enum ClassicSetting
{
    /// <summary>Diamonds of light and dark, one about the corner of every four blocks.</summary>
    LightAndDark,

    /// <summary>Straight bands of light and dark along one diagonal.</summary>
    StraightFurrows,

    /// <summary>Diamond rings of light and dark round the middle of the quilt.</summary>
    BarnRaising,

    /// <summary>Bands of light and dark that zigzag across the quilt.</summary>
    StreakOfLightning,
}

/// <summary>The classic settings as turns of any block that is divided along a diagonal into light and dark.</summary>
public static class ClassicSettings
{
    /// <summary>The repeat for a quilt of so many columns and rows; of a barn raising it is the whole quilt.</summary>
    /// <param name="dark">Which corner of the block is dark as it is drawn.</param>
    public static ImmutableArray<ImmutableArray<Cell>> Cells(ClassicSetting setting, string block, BlockCorner dark, int columns, int rows)
    {
        var (wide, high) = setting == ClassicSetting.BarnRaising ? (columns, rows) : (2, 2);
        return
        [
            .. Enumerable
                .Range(0, high)
                .Select(row =>
                    Enumerable
                        .Range(0, wide)
                        .Select(column => new Cell(block, Turns(dark, DarkAt(setting, row, column, columns, rows)), false))
                        .ToImmutableArray()
                ),
        ];
    }

    /// <summary>
    /// Whether the figure comes out whole: rings and diamonds need an even count both ways, zigzags an even count across.
    /// </summary>
    /// <remarks>[SPRUCE] says that four blocks repeat; the rest is own reasoning from the figures.</remarks>
    public static bool Completes(ClassicSetting setting, int columns, int rows) =>
        setting switch
        {
            ClassicSetting.LightAndDark or ClassicSetting.BarnRaising => int.IsEvenInteger(columns) && int.IsEvenInteger(rows),
            ClassicSetting.StreakOfLightning => int.IsEvenInteger(columns),
            _ => true,
        };

    /// <summary>The corner of the cell where the block's dark half must lie.</summary>
    private static BlockCorner DarkAt(ClassicSetting setting, int row, int column, int columns, int rows)
    {
        bool oddRow = int.IsOddInteger(row),
            oddColumn = int.IsOddInteger(column);
        switch (setting)
        {
            case ClassicSetting.LightAndDark:
                // Toward the corner that every four blocks share.
                return Corner(right: !oddColumn, upper: oddRow);
            case ClassicSetting.StraightFurrows:
                return Corner(right: oddRow == oddColumn, upper: oddRow != oddColumn);
            case ClassicSetting.StreakOfLightning:
                // Furrows, every other column mirrored.
                return Corner(right: oddRow == oddColumn, upper: oddRow);
            default:
                // Furrows in each quarter, mirrored across the middle; of an odd count the later half is larger.
                int down = row < rows / 2 ? (rows / 2) - 1 - row : row - (rows / 2),
                    across = column < columns / 2 ? (columns / 2) - 1 - column : column - (columns / 2);
                var outward = int.IsEvenInteger(down + across);
                return Corner(right: (column >= columns / 2) == outward, upper: (row < rows / 2) == outward);
        }
    }

    private static BlockCorner Corner(bool right, bool upper) =>
        (right, upper) switch
        {
            (true, false) => BlockCorner.LowerRight,
            (true, true) => BlockCorner.UpperRight,
            (false, true) => BlockCorner.UpperLeft,
            _ => BlockCorner.LowerLeft,
        };

    private static int Turns(BlockCorner from, BlockCorner to) => (((int)to - (int)from) + 4) % 4;
}
