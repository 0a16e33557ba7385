using System.Collections.Immutable;
using System.Globalization;

namespace Kitwright.Settings;

/// <summary>
/// A repeat's turns as short text, for addresses: <c>2.0123</c> is two by two cells, row by row; 0 to 3 are the quarter
/// turns, 4 to 7 those of the mirrored block.
/// </summary>
public static class RepeatText
{
    private const int MostSide = 9;

    public static string Of(Arrangement arrangement, Looks looks) =>
        $"{(int)Math.Sqrt(arrangement.Looks.Length)}." + string.Concat(arrangement.Looks.Select(look => Digit(looks.Each[look])));

    /// <summary>Null where the text is no repeat.</summary>
    public static ImmutableArray<ImmutableArray<Position>>? Parse(string text)
    {
        var parts = text.Split('.');
        return
            parts.Length == 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var side)
            && side is >= 1 and <= MostSide
            && parts[1].Length == side * side
            && parts[1].All(c => c is >= '0' and <= '7')
            ? [.. parts[1].Chunk(side).Select(row => row.Select(Position).ToImmutableArray())]
            : null;
    }

    private static Position Position(char digit) => new((digit - '0') % 4, digit >= '4');

    private static char Digit(Position position) => (char)('0' + position.Turns + (position.Mirror ? 4 : 0));
}
