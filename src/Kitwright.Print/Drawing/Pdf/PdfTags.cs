using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>The structure tags of PDF (ISO 32000-1, 14.8.4) for our roles.</summary>
internal static class PdfTags
{
    public static PdfBlockLevelElementTag Of(Role role) =>
        role switch
        {
            HeadingRole { Level: 1 } => PdfBlockLevelElementTag.Heading1,
            HeadingRole { Level: 2 } => PdfBlockLevelElementTag.Heading2,
            HeadingRole => PdfBlockLevelElementTag.Heading3,
            TableRole => PdfBlockLevelElementTag.Table,
            TableRowRole => PdfBlockLevelElementTag.TableRow,
            HeaderCellRole => PdfBlockLevelElementTag.TableHeaderCell,
            CellRole => PdfBlockLevelElementTag.TableDataCell,
            _ => PdfBlockLevelElementTag.Paragraph,
        };

    /// <summary>A head cell speaks for its column; the library has no call for that.</summary>
    public static void Scope(StructureBuilder structure, Role role)
    {
        if (role is HeaderCellRole)
        {
            var attributes = new PdfDictionary();
            attributes.Elements["/O"] = new PdfName("/Table");
            attributes.Elements["/Scope"] = new PdfName("/Column");
            structure.CurrentStructureElement.Elements["/A"] = attributes;
        }
    }
}
