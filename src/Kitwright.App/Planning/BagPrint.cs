using Kitwright.App.Web;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits.Forms;
using Kitwright.Plans;
using Kitwright.Print.Pages;
using Kitwright.Publishing;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Planning;

/// <summary>The sheets of one kit: the same for page, command and API.</summary>
internal static class BagPrint
{
    /// <summary>"yardage", "strip-cut" or "fully-cut"; null where there is no such form.</summary>
    public static KitForm? FormOf(string? text) =>
        Enum.GetValues<KitForm>().Cast<KitForm?>().FirstOrDefault(form => string.Equals(BagSheets.NameOf(form!.Value), text, StringComparison.OrdinalIgnoreCase));

    /// <summary>The PDF; of somebody else's pattern only what its license lets be printed.</summary>
    public static Checked<byte[]> Of(Quilt quilt, QuiltPlan? plan, KitForm form, Shelf shelf, PaperSize paper, Catalog language)
    {
        if (PublicQuilt.NoBooklet(quilt) is { } refused)
        {
            return Checked<byte[]>.Failed(refused);
        }

        if (plan is null)
        {
            return Checked<byte[]>.Failed();
        }

        using var pdf = new MemoryStream();
        BagSheets.Write(quilt, plan, form, shelf, paper, language, pdf);
        return Checked<byte[]>.Of(pdf.ToArray());
    }
}
