using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Quilts;

namespace Kitwright.App.Features.KitsStop;

/// <summary>How many kits of each colorway are wanted, as an address holds them: <c>Harbor lights:10,Heather dusk:4</c>.</summary>
public static class Wanted
{
    public const int Usual = 10;
    public const int Most = 999;

    /// <summary>For every colorway of the quilt; <see cref="Usual"/> where the text says nothing that can be used.</summary>
    public static ImmutableSortedDictionary<string, int> Parse(string? text, Quilt quilt)
    {
        var said = (text ?? "")
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(part => (Part: part, Colon: part.LastIndexOf(':')))
            .Where(part => part.Colon > 0)
            .ToLookup(part => part.Part[..part.Colon], part => part.Part[(part.Colon + 1)..]);
        return quilt.Colorways.ToImmutableSortedDictionary(
            colorway => colorway.Name,
            colorway => Count(said[colorway.Name].LastOrDefault()) ?? Usual,
            StringComparer.Ordinal
        );
    }

    public static string Text(ImmutableSortedDictionary<string, int> wanted) =>
        string.Join(',', wanted.Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Key}:{line.Value}")));

    /// <summary>A whole number from 0 to <see cref="Most"/>, else null.</summary>
    public static int? Count(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= Most ? count : null;
}
