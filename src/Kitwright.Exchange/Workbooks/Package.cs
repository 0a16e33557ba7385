using System.IO.Compression;
using System.Xml;

namespace Kitwright.Exchange.Workbooks;

/// <summary>
/// The parts of a workbook and how they refer to one another: a zip archive by the Open Packaging Conventions
/// (ECMA-376 part 2; from memory). Nothing is unpacked to the disk.
/// </summary>
internal sealed class Package(ZipArchive archive) : IDisposable
{
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        CloseInput = true,
    };

    /// <summary>The part's text, or null where there is no such part.</summary>
    /// <param name="path">From the root, without a leading slash.</param>
    public XmlReader? Open(string path, long limit) =>
        archive.GetEntry(path) is { } entry ? XmlReader.Create(new CountedStream(entry.Open(), path, limit), Settings) : null;

    /// <summary>What a part refers to, by the id that it uses; the id is the kind for the root's own references.</summary>
    /// <param name="path">The part; empty for the root.</param>
    public IEnumerable<(string Id, string Kind, string Path)> References(string path)
    {
        var slash = path.LastIndexOf('/');
        var folder = path[..(slash + 1)];
        using var xml = Open($"{folder}_rels/{path[(slash + 1)..]}.rels", WorkbookLimits.HeldPart);
        while (xml?.Read() == true)
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "Relationship" } && xml.GetAttribute("Target") is { } target)
            {
                var kind = xml.GetAttribute("Type") ?? "";
                yield return (xml.GetAttribute("Id") ?? "", kind[(kind.LastIndexOf('/') + 1)..], Absolute(folder, target));
            }
        }
    }

    public void Dispose() => archive.Dispose();

    private static string Absolute(string folder, string target) =>
        Uri.TryCreate("zip:///" + folder, UriKind.Absolute, out var from) && Uri.TryCreate(from, target, out var uri) ? Uri.UnescapeDataString(uri.AbsolutePath).TrimStart('/') : target;
}
