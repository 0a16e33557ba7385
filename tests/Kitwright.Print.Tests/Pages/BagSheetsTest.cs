using Kitwright.Kits.Forms;
using Kitwright.Print.Pages;
using Kitwright.Words;
using UglyToad.PdfPig;

namespace Kitwright.Print.Tests.Pages;

public sealed class BagSheetsTest
{
    [Theory]
    [InlineData(KitForm.Yardage)]
    [InlineData(KitForm.StripCut)]
    [InlineData(KitForm.FullyCut)]
    public void What_the_shop_cuts_stands_before_what_the_bag_holds_and_its_buyer_cuts(KitForm form)
    {
        var plan = Demo.Plan(Demo.Quilt, 0);
        using var output = new MemoryStream();
        BagSheets.Write(Demo.Quilt, plan, form, Demo.Shelf, PaperSize.Letter, Catalog.English, output);
        using var pdf = PdfDocument.Open(output.ToArray());
        var pages = pdf.GetPages().Select(PrintedBooklet.TextOf).ToList();
        var second = pages.FindIndex(page => page.StartsWith(Catalog.English.Say("form.holds"), StringComparison.Ordinal));
        Assert.True(second > 0);
        string shop = string.Join(' ', pages.Take(second)),
            bag = string.Join(' ', pages.Skip(second));

        Assert.StartsWith(Catalog.English.Say("form.shop"), shop, StringComparison.Ordinal);
        foreach (var fabric in KitBag.Of(plan, form).Fabrics)
        {
            Assert.Contains(Catalog.English.Say(fabric.FromBolt), shop, StringComparison.Ordinal);
            Assert.All(fabric.ShopCuts, cut => Assert.Contains(Catalog.English.Say(cut), shop, StringComparison.Ordinal));
            // Nothing is promised that the bag does not hold: its lines are those of the form, word for word.
            Assert.All(fabric.Holds, line => Assert.Contains(Catalog.English.Say(line), bag, StringComparison.Ordinal));
            Assert.All(fabric.CustomerCuts, cut => Assert.Contains(Catalog.English.Say(cut), bag, StringComparison.Ordinal));
        }

        Assert.Equal(form == KitForm.FullyCut, bag.Contains(Catalog.English.Say("bag.nothing"), StringComparison.Ordinal));
        Assert.Equal(form != KitForm.FullyCut, bag.Contains(Catalog.English.Say("print.caution.cutter.1"), StringComparison.Ordinal));
    }
}
