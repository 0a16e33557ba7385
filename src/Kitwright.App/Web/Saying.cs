using System.Text.RegularExpressions;
using Kitwright.Words;

namespace Kitwright.App.Web;

/// <summary>The pages' way to the message templates.</summary>
public static partial class Saying
{
    public static string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Unbroken(Catalog.English.Say(key, slots));

    public static string Say(Message message) => Unbroken(Catalog.English.Say(message));

    /// <summary>A measure stays on one line: "3 7/8 in" is held together by no-break spaces.</summary>
    private static string Unbroken(string text) => Measure().Replace(text, match => match.Value.Replace(' ', '\u00A0'));

    [GeneratedRegex(@"\d \d+/\d+|\d (in|yd)\b|\d × |× \d")]
    private static partial Regex Measure();
}
