using System.Text.RegularExpressions;

namespace Kitwright.Words;

/// <summary>Whole words of a text replaced by others, with a capital where there was one.</summary>
internal sealed partial class Rewording(IReadOnlyDictionary<string, string> words)
{
    public string Of(string text) =>
        Word().Replace(text, match => words.TryGetValue(match.Value.ToLowerInvariant(), out var other) ? Cased(other, match.Value) : match.Value);

    private static string Cased(string word, string like) => char.IsUpper(like[0]) ? SentenceStart.Of(word) : word;

    [GeneratedRegex("[A-Za-z]+")]
    private static partial Regex Word();
}
