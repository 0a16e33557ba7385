using System.IO.Compression;
using System.Xml;
using Kitwright.Findings;

namespace Kitwright.Exchange.Workbooks;

/// <summary>
/// Reads the first sheet that shows of an Office Open XML workbook (ECMA-376; from memory), bounded in bytes and
/// rows, whatever the file claims of itself.
/// </summary>
/// <remarks>Own code: the libraries at hand give a formula's last value without saying that it is one, and trust the sizes that an archive claims.</remarks>
internal static class Workbook
{
    /// <summary>What <paramref name="read"/> makes of the sheet, or why there is none.</summary>
    public static Checked<T> With<T>(byte[] bytes, Func<Sheet, Checked<T>> read)
        where T : class
    {
        if (bytes.Length > WorkbookLimits.Bytes)
        {
            return Checked<T>.Failed(Finding.Of("stock.too-big", "file", ("limit", WorkbookLimits.Bytes / 1024 / 1024)));
        }

        try
        {
            using var package = new Package(new(new MemoryStream(bytes), ZipArchiveMode.Read));
            var book = package.References("").FirstOrDefault(r => r.Kind == "officeDocument").Path;
            var references = book is null ? [] : package.References(book).ToList();
            if (book is null || SheetOf(package, book, references) is not { } path)
            {
                return Checked<T>.Failed(Finding.Of("stock.not-a-workbook", "file"));
            }

            var strings = SharedStrings.Read(package, PathOf(references, "sharedStrings"));
            var dates = DateStyles.Read(package, PathOf(references, "styles"));
            using var xml = package.Open(path, WorkbookLimits.Sheet);
            return xml is null ? Checked<T>.Failed(Finding.Of("stock.not-a-workbook", "file")) : read(new(xml, strings, dates));
        }
        catch (Exception fault) when (IsOfTheFile(fault))
        {
            return Checked<T>.Failed(FindingOf(fault));
        }
    }

    /// <summary>Whether it is the file that is at fault: no zip, no XML, cut short, packed in an unknown way, too big.</summary>
    public static bool IsOfTheFile(Exception fault) =>
        fault is InvalidDataException or XmlException or IOException or NotSupportedException;

    public static Finding FindingOf(Exception fault) =>
        fault is PartTooBigException
            ? Finding.Of("stock.unpacks-too-big", "file", ("limit", WorkbookLimits.Sheet / 1024 / 1024))
            : Finding.Of("stock.not-a-workbook", "file");

    private static string? SheetOf(Package package, string book, List<(string Id, string Kind, string Path)> references)
    {
        using var xml = package.Open(book, WorkbookLimits.HeldPart);
        while (xml?.Read() == true)
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "sheet" } && xml.GetAttribute("state") is null or "visible")
            {
                var id = IdOf(xml);
                return references.FirstOrDefault(r => r.Id == id && r.Kind == "worksheet").Path;
            }
        }

        return null;
    }

    // The attribute is r:id, whatever its prefix and version of the namespace.
    private static string? IdOf(XmlReader xml)
    {
        string? id = null;
        while (xml.MoveToNextAttribute())
        {
            id = xml.LocalName == "id" ? xml.Value : id;
        }

        xml.MoveToElement();
        return id;
    }

    private static string? PathOf(List<(string Id, string Kind, string Path)> references, string kind) =>
        references.FirstOrDefault(r => r.Kind == kind).Path;
}
