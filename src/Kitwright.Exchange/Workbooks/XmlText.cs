using System.Text;
using System.Xml;
using Kitwright.Stock;

namespace Kitwright.Exchange.Workbooks;

internal static class XmlText
{
    /// <summary>
    /// The text inside the element on which the reader stands, at most one character more than a cell may hold; the
    /// rest is passed over. The reader ends on the element's end.
    /// </summary>
    /// <param name="only">Where given, only text in elements of this name; none in phonetic guides.</param>
    public static string Of(XmlReader xml, string? only = null)
    {
        var text = new StringBuilder();
        if (xml.IsEmptyElement)
        {
            return "";
        }

        var depth = xml.Depth;
        var inside = only is null;
        var buffer = new char[256];
        var more = xml.Read();
        while (more && xml.Depth > depth)
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "rPh" })
            {
                // Stands on the node behind it afterward.
                xml.Skip();
                continue;
            }

            if (xml.LocalName == only && xml.NodeType is XmlNodeType.Element or XmlNodeType.EndElement)
            {
                inside = xml.NodeType == XmlNodeType.Element && !xml.IsEmptyElement;
            }
            else if (inside && xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace)
            {
                Append(xml, text, buffer);
            }

            more = xml.Read();
        }

        return text.ToString();
    }

    private static void Append(XmlReader xml, StringBuilder text, char[] buffer)
    {
        int count;
        while (text.Length <= TableLimits.Characters && (count = xml.ReadValueChunk(buffer, 0, buffer.Length)) > 0)
        {
            text.Append(buffer, 0, count);
        }
    }
}
