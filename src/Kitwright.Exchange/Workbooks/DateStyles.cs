using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml;

namespace Kitwright.Exchange.Workbooks;

/// <summary>
/// Which cell styles show a number as a date. A spreadsheet takes 3/8 for the eighth of March unless the cell was
/// text, and what stands in the file is then a count of days.
/// </summary>
/// <remarks>Built-in formats 14 to 22, 27 to 36, 45 to 47 and 50 to 58 are dates and times (ECMA-376 part 1, 18.8.30; from memory).</remarks>
internal static partial class DateStyles
{
    /// <summary>One for each cell style, in order.</summary>
    public static List<bool> Read(Package package, string? path)
    {
        var formats = new Dictionary<int, bool>();
        var styles = new List<bool>();
        var inCellStyles = false;
        using var xml = path is null ? null : package.Open(path, WorkbookLimits.HeldPart);
        while (xml?.Read() == true)
        {
            if (xml.LocalName == "cellXfs")
            {
                inCellStyles = xml.NodeType == XmlNodeType.Element && !xml.IsEmptyElement;
            }
            else if (xml is { NodeType: XmlNodeType.Element, LocalName: "numFmt" })
            {
                formats[Number(xml.GetAttribute("numFmtId"))] = IsDate(xml.GetAttribute("formatCode") ?? "");
            }
            else if (inCellStyles && xml is { NodeType: XmlNodeType.Element, LocalName: "xf" })
            {
                var format = Number(xml.GetAttribute("numFmtId"));
                styles.Add(formats.GetValueOrDefault(format, IsBuiltInDate(format)));
            }
        }

        return styles;
    }

    private static bool IsBuiltInDate(int format) => format is (>= 14 and <= 22) or (>= 27 and <= 36) or (>= 45 and <= 47) or (>= 50 and <= 58);

    // Letters in quotes, brackets or behind a backslash are text.
    private static bool IsDate(string code) => Literals().Replace(code, "").AsSpan().IndexOfAny("dmyhsDMYHS") >= 0;

    private static int Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    [GeneratedRegex("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|General", RegexOptions.IgnoreCase)]
    private static partial Regex Literals();
}
