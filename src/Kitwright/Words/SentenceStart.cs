namespace Kitwright.Words;

/// <summary>Words that stand in the middle of a sentence elsewhere, at the start of one.</summary>
public static class SentenceStart
{
    public static string Of(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
