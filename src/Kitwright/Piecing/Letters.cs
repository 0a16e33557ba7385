using System.Collections.Immutable;

namespace Kitwright.Piecing;

/// <summary>The letter of each role's fabric: A, B, C … in the order of the swatch key.</summary>
public sealed class Letters
{
    private readonly ImmutableDictionary<string, string> byRole;

    /// <param name="groups">The roles that share a letter, in order.</param>
    public Letters(ImmutableArray<ImmutableArray<string>> groups)
    {
        Groups = groups;
        byRole = groups
            .SelectMany((roles, index) => roles.Select(role => KeyValuePair.Create(role, Name(index))))
            .ToImmutableDictionary(StringComparer.Ordinal);
    }

    public ImmutableArray<ImmutableArray<string>> Groups { get; }

    public string Of(string role) => byRole[role];

    /// <summary>A … Z, then AA, AB …; I and O are left out, as they read like figures on a label.</summary>
    public static string Name(int index)
    {
        const string Alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        var name = "";
        for (var rest = index; rest >= 0; rest = (rest / Alphabet.Length) - 1)
        {
            name = Alphabet[rest % Alphabet.Length] + name;
        }

        return name;
    }
}
