using Kitwright.Plans;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Structure;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>
/// The path ids of pictures, as identifiers of their structure elements and in the tree by which a reader finds them
/// (ISO 32000-1, 14.7.2, tables 322 and 323).
/// </summary>
internal sealed class PdfIds
{
    private readonly SortedDictionary<string, PdfStructureElement> named = new(StringComparer.Ordinal);

    /// <summary>An identifier is unique in a file: the first picture of an item has it.</summary>
    public void Name(PdfStructureElement element, PathId id)
    {
        if (id != default && named.TryAdd(id.Value, element))
        {
            element.Elements["/ID"] = new PdfString(id.Value);
        }
    }

    public void Write(PdfStructureTreeRoot root)
    {
        if (named.Count == 0)
        {
            return;
        }

        var names = new PdfArray();
        foreach (var (id, element) in named)
        {
            names.Elements.Add(new PdfString(id));
            names.Elements.Add(element.Reference!);
        }

        var leaf = new PdfDictionary();
        leaf.Elements["/Names"] = names;
        root.Elements["/IDTree"] = leaf;
    }
}
