using System.Text.RegularExpressions;

namespace Kitwright.Shop.Revisions;

/// <summary>Names in addresses: lower case letters, digits and single hyphens.</summary>
public static partial class Slug
{
    private const int Longest = 60;

    /// <summary>The name's slug; "quilt" where nothing of the name is left.</summary>
    public static string Of(string name)
    {
        var slug = Others().Replace(name.ToLowerInvariant(), "-");
        slug = slug[..Math.Min(Longest, slug.Length)].Trim('-');
        return slug.Length == 0 ? "quilt" : slug;
    }

    /// <summary>The slug itself where it is free, else with the least number from 2 that makes it so.</summary>
    public static string Free(string slug, IReadOnlySet<string> taken)
    {
        var free = slug;
        for (var number = 2; taken.Contains(free); number++)
        {
            free = $"{slug}-{number}";
        }

        return free;
    }

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex Others();
}
