namespace Kitwright.Print.Text;

/// <summary>Where measures stand in a text: fractions are set as such, and "3 7/8 in" is never broken over two lines.</summary>
internal static class Measures
{
    private static readonly string[] Units = ["in", "yd", "mm", "cm", "m"];

    /// <summary>The place of the slash, where a fraction of figures begins here.</summary>
    public static int? FractionAt(string text, int at)
    {
        if (!char.IsAsciiDigit(text[at]) || (at > 0 && (char.IsAsciiLetterOrDigit(text[at - 1]) || text[at - 1] is '/' or '.')))
        {
            return null;
        }

        var slash = EndOfDigits(text, at);
        return slash + 1 < text.Length && text[slash] == '/' && char.IsAsciiDigit(text[slash + 1]) ? slash : null;
    }

    public static int EndOfDigits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    /// <summary>Whether a line may end at this space.</summary>
    public static bool MayBreakAt(string text, int space)
    {
        var next = NextWord(text, space + 1);
        var before = space > 0 ? text[space - 1] : ' ';
        if (next is "×" || before == '×')
        {
            return false;
        }

        return !char.IsAsciiDigit(before)
            || !(Units.Contains(next.TrimEnd('.', ',', ';', ':', ')')) || (next.Length > 0 && FractionAt(text, space + 1) is not null));
    }

    private static string NextWord(string text, int at)
    {
        var end = text.IndexOf(' ', at);
        return end < 0 ? text[at..] : text[at..end];
    }
}
