using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Tests.Cutting;

/// <summary>Cutting problems in one line: <c>Cloth.Of(40, ("2 1/2 x 6 1/2", 178))</c>. No allowances unless given.</summary>
internal static class Cloth
{
    public static ClothTerms Terms(string width, string straightening = "0") =>
        ClothTerms.Usual with
        {
            UsableWidth = Read(width),
            Straightening = Read(straightening),
        };

    /// <param name="pieces">Width by height and count; a trailing "turn" lets the piece be turned.</param>
    public static ClothProblem Of(ClothTerms terms, params (string Size, int Count)[] pieces) =>
        new(
            new("cloth/A"),
            "A",
            ["role"],
            null,
            terms,
            [.. pieces.Select((p, i) => Demand(i + 1, p.Size, p.Count))],
            SpareStrips: 0,
            CutGoal.ByTheInch
        );

    public static ClothProblem Of(string width, params (string Size, int Count)[] pieces) => Of(Terms(width), pieces);

    public static Length Read(string text) =>
        LengthText.TryParse(text, out var length) ? length : throw new FormatException(text);

    private static ClothDemand Demand(int number, string size, int count)
    {
        var turn = size.EndsWith(" turn", StringComparison.Ordinal);
        var sides = size.Replace(" turn", "", StringComparison.Ordinal).Split(" x ");
        return new(new($"piece/A{number}"), $"A{number}", Read(sides[0]), Read(sides[1]), count, turn);
    }
}
