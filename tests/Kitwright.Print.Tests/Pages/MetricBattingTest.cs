using Kitwright.Measure;
using Kitwright.Print.Pages;

namespace Kitwright.Print.Tests.Pages;

/// <summary>Packages of batting are made in inches; a booklet in centimeters tells them in whole ones.</summary>
public sealed class MetricBattingTest
{
    [Fact]
    public void APackageIsToldInWholeCentimetersThatItSurelyHas()
    {
        var booklet = PrintedBooklet.Print(Demo.Quilt with { Units = LengthUnit.Centimeter }, PaperSize.A4);
        var package = booklet.Plan.Needs.Batting!.Package!;

        // An inch is 2.54 cm exactly: ISO 31-1:1992, annex A.
        var told = $"about {Whole(package.Width)} × {Whole(package.Height)} cm, holds it";

        // A line may break anywhere in it.
        var text = string.Join(' ', string.Join(' ', booklet.Texts).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(told, text[text.IndexOf("packaged batting", StringComparison.Ordinal)..][..120], StringComparison.Ordinal);
    }

    private static int Whole(Length side) => (int)Math.Floor(double.Parse(LengthText.Inches(side), System.Globalization.CultureInfo.InvariantCulture) * 2.54);
}
