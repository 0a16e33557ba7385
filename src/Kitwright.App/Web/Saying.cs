using System.Text.RegularExpressions;
using Kitwright.Words;

namespace Kitwright.App.Web;

/// <summary>The pages' way to the message templates.</summary>
public static partial class Saying
{
    public static string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Say(Catalog.English, Message.Of(key, slots));

    public static string Say(Message message) => Say(Catalog.English, message);

    public static string Say(Catalog language, Message message) => Unbroken(language.Say(message));

    /// <summary>A measure stays on one line: "3 7/8 in" is held together by no-break spaces.</summary>
    private static string Unbroken(string text) => Measure().Replace(text, match => match.Value.Replace(' ', '\u00A0'));

    [GeneratedRegex(@"\d \d+/\d+|\d (in|yd|cm|m)\b|\d × |× \d")]
    private static partial Regex Measure();
}
