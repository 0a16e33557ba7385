using System.Text.RegularExpressions;
using Kitwright.App.Tests.Browser;
using Kitwright.App.Tests.Commands;
using Kitwright.Kits;
using Kitwright.Words;
using Microsoft.AspNetCore.Builder;
using UglyToad.PdfPig;

namespace Kitwright.App.Tests.Shop;

/// <summary>A quilt planned in centimeters says nothing in inches, on screen, on paper and in the terminal.</summary>
public sealed partial class MetricTest(MetricTest.Shop shop) : IClassFixture<MetricTest.Shop>
{
    private static readonly string Skerry = Run.File("examples", "quilts", "skerry-lights.json");

    /// <summary>The demo shop under metric terms and British words; nobody changes it.</summary>
    public sealed class Shop : IAsyncLifetime
    {
        public WebApplication Served { get; private set; } = null!;

        public async ValueTask InitializeAsync() => Served = await Chromium.Shop(ShopTerms.UsualMetric with { Words = TradeWords.British });

        public ValueTask DisposeAsync() => Served.DisposeAsync();
    }

    // Worked by hand: 8 cm finished with 7.5 mm seams is cut 9.5 cm; half-square triangles two at a time take
    // 8 cm + (2 + √2) × 0.75 cm = 10.56 cm, on a ruler of 5 mm 11 cm; sashes 24 × 4 cm are cut 25.5 × 5.5 cm.
    [Fact]
    public async Task The_plan_is_in_centimeters_and_sold_in_steps_of_ten()
    {
        var plan = await Run.Of("plan", Skerry, "--stock", Run.Stock, "--colorway", "Beacon night");

        Assert.Equal(0, plan.Exit);
        foreach (var said in (string[])["A1  60 of 11 × 11 cm", "A2  120 of 9.5 × 9.5 cm", "C1  71 of 25.5 × 5.5 cm", "Binding: 8 strips of 6 cm for 753 cm"])
        {
            Assert.Contains(said, plan.Output, StringComparison.Ordinal);
        }

        Assert.All(Purchase().Matches(plan.Output), match => Assert.Matches(@"^\d+(\.\d)?$", match.Groups[1].Value));
        Assert.DoesNotMatch(Imperial(), plan.Output);
    }

    [Fact]
    public async Task So_are_sewing_and_kits()
    {
        Assert.DoesNotMatch(Imperial(), (await Run.Of("sew", Skerry)).Output);
        Assert.DoesNotMatch(Imperial(), (await Run.Of("kits", Skerry, Run.Stock, "--each", "2")).Output);
    }

    [Theory]
    [InlineData("plan", "--why", "--form", "yardage")]
    [InlineData("plan", "--form", "strip-cut")]
    [InlineData("plan", "--form", "fully-cut", "--colorway", "nobody’s")]
    [InlineData("sizes", "--target", "150x200 cm")]
    [InlineData("sizes", "--bed", "queen", "--drop", "30 cm")]
    [InlineData("accuracy", "--across", "8.9", "--middle", "2.4", "--quilts", "100")]
    [InlineData("accuracy", "--across", "5", "--middle", "2.4", "--quilts", "100")]
    public async Task And_every_other_verb(params string[] args)
    {
        var run = await Run.Of([args[0], Skerry, .. args[1..]]);

        Assert.Equal("", run.Error);
        Assert.DoesNotMatch(Imperial(), run.Output);
        Assert.DoesNotMatch(Long(), run.Output);
    }

    // 3 strips of 4 cm with 7.5 mm seams come to 9 cm, the middle one to 2.5 cm (own arithmetic).
    [Fact]
    public async Task The_seam_test_of_a_quilt_in_centimeters_has_strips_of_four()
    {
        var run = await Run.Of("accuracy", Skerry, "--across", "9", "--middle", "2.5", "--quilts", "100");

        Assert.StartsWith("Seam test: three strips measure 9 cm and should measure 9 cm; the middle one measures 2.5 cm and should measure 2.5 cm.", run.Output, StringComparison.Ordinal);
        Assert.Contains("The seam is right", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Templates_are_measured_by_three_centimeters()
    {
        var path = Scratch.Written("");
        Assert.Equal(0, (await Run.Of("templates", Skerry, "--out", path)).Exit);
        using var pdf = PdfDocument.Open(path);
        var text = string.Join('\n', pdf.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text))));

        Assert.DoesNotMatch(Imperial(), text);
        foreach (var page in pdf.GetPages())
        {
            var sides = page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>();
            Assert.Contains(sides, box => Math.Abs(box.Width - (30 / 25.4 * 72)) < 0.01);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("/pull")]
    [InlineData("/cut")]
    [InlineData("/sew")]
    [InlineData("/kits")]
    [InlineData("/license")]
    [InlineData("/pattern")]
    [InlineData("/sizes?for=bed-queen")]
    [InlineData("/sizes?target=150x200")]
    public async Task Pages_are_in_centimeters_and_cloth_in_what_the_shop_sells_by(string stop)
    {
        using var client = new HttpClient { BaseAddress = new(shop.Served.Urls.Single()) };
        var html = await client.GetStringAsync(new Uri($"/quilts/skerry-lights{stop}", UriKind.Relative), TestContext.Current.CancellationToken);

        var text = Tags().Replace(html, " ");
        Assert.Matches(@"\d\s(cm|m)\b|metre", text);
        Assert.DoesNotMatch(Imperial(), text);
        Assert.DoesNotMatch(Long(), text);
        Assert.DoesNotMatch(American(), text);
        // What is said to the ear only.
        var labels = string.Join('\n', Label().Matches(html).Select(match => match.Groups[1].Value));
        Assert.NotEmpty(labels);
        Assert.DoesNotMatch(Imperial(), labels);
        Assert.DoesNotMatch(American(), labels);
    }

    [Fact]
    public async Task The_terms_and_what_is_chosen_for_them_are_in_the_words_of_the_shop()
    {
        using var client = new HttpClient { BaseAddress = new(shop.Served.Urls.Single()) };
        var html = await client.GetStringAsync(new Uri("/shop/terms", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Matches("<option[^>]*>metre</option>", html);
        Assert.DoesNotMatch(American(), Tags().Replace(html, " "));
    }

    // 45 cm x 110 cm without a unit; 20 in of leftover is told as 50.8 cm, and never as more than there is (own arithmetic).
    [Fact]
    public async Task Cloth_that_is_there_is_written_down_in_centimeters()
    {
        using var client = new HttpClient { BaseAddress = new(shop.Served.Urls.Single()) };
        var html = await client.GetStringAsync(new Uri("/quilts/skerry-lights/stash?have=45 x 110", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Matches(@"45\scm|45\s×\s110|110\s×\s45", Tags().Replace(html, " "));
        Assert.DoesNotMatch(Imperial(), Tags().Replace(html, " "));
    }

    [Fact]
    public async Task The_booklet_is_too_and_its_square_measures_five_centimeters()
    {
        using var client = new HttpClient { BaseAddress = new(shop.Served.Urls.Single()) };
        using var pdf = PdfDocument.Open(
            await client.GetByteArrayAsync(new Uri("/quilts/skerry-lights/booklet.pdf?paper=a4", UriKind.Relative), TestContext.Current.CancellationToken)
        );

        var text = string.Join('\n', pdf.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text))));
        Assert.Contains("five centimetres", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(Imperial(), text);
        Assert.DoesNotMatch(American(), text);
        var sides = pdf.GetPages().SelectMany(page => page.Paths).Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>();
        Assert.Contains(sides, box => Math.Abs(box.Width - (50 / 25.4 * 72)) < 0.01 && Math.Abs(box.Height - box.Width) < 0.01);
    }

    [Fact]
    public async Task A_value_in_its_sentence_is_changed_in_centimeters()
    {
        using var client = new HttpClient { BaseAddress = new(shop.Served.Urls.Single()) };
        var html = await client.GetStringAsync(new Uri("/quilts/skerry-lights?try=border.1:9.5 cm", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Contains("<option value=\"9.5 cm\" selected", html, StringComparison.Ordinal);
        Assert.Contains("Width of border 1, in centimetres", html, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\d\s(in(?! (all|one|\d))|yd)\b|\binch|\byards?\b")]
    private static partial Regex Imperial();

    [GeneratedRegex(@"\b(color(way)?s?|batting|selvages?|centers?|meters?|centimeters?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex American();

    /// <summary>A decimal that no ruler shows.</summary>
    [GeneratedRegex(@"\d\.\d{3,}\s?(c?m)\b")]
    private static partial Regex Long();

    [GeneratedRegex(@"Fabric \w+, [^:]+: ([\d.]+) m")]
    private static partial Regex Purchase();

    [GeneratedRegex("aria-label=\"([^\"]*)\"")]
    private static partial Regex Label();

    [GeneratedRegex(@"<[^>]*>|&#xA0;")]
    private static partial Regex Tags();
}
