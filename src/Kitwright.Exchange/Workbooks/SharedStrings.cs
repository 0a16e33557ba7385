using System.Xml;

namespace Kitwright.Exchange.Workbooks;

/// <summary>Texts that cells refer to by number.</summary>
internal static class SharedStrings
{
    public static List<string> Read(Package package, string? path)
    {
        var strings = new List<string>();
        using var xml = path is null ? null : package.Open(path, WorkbookLimits.HeldPart);
        while (xml?.Read() == true)
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "si" })
            {
                strings.Add(XmlText.Of(xml, only: "t"));
                if (strings.Count > WorkbookLimits.SharedStrings)
                {
                    throw new PartTooBigException(path!);
                }
            }
        }

        return strings;
    }
}
