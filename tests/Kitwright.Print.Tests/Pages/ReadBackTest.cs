using System.Globalization;
using System.Text.RegularExpressions;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Pages;

namespace Kitwright.Print.Tests.Pages;

/// <summary>Every number that the booklet prints, read back from the PDF and held against the plan.</summary>
public sealed class ReadBackTest
{
    private const string Number = @"(\d+(?: \d+/\d+)?|\d+/\d+)";
    private const string Shares = @"(?:From|Keep) (?:the other )?(\d+|one)";

    private static Length Inches(string text)
    {
        Assert.True(LengthText.TryParse(text, out var length), text);
        return length;
    }

    private static int Count(string text) => int.Parse(text, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);

    /// <summary>The stars in every colorway and none, on both papers, and the other demo quilts once each.</summary>
    public static TheoryData<string, int, PaperSize> Booklets =>
        [
            .. from colorway in Enumerable.Range(-1, Demo.Quilt.Colorways.Length + 1)
            from paper in Enum.GetValues<PaperSize>()
            select (Demo.Stars, colorway, paper),
            ("lantern-steps", 3, PaperSize.Letter),
            ("tidemark-nine-patch", 0, PaperSize.A4),
            ("forty-bags-friendship", 0, PaperSize.Letter),
        ];

    [Theory, MemberData(nameof(Booklets))]
    public void NeedsAreThoseOfThePlan(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var text = booklet.Chapter("What you need", "Before you cut");
        foreach (var need in booklet.Plan.Needs.Lengths)
        {
            var fabric = booklet.Plan.Fabrics.Single(f => f.Letter == need.Letter);
            // A role's name may end in a figure, so it is read whole.
            var role = Demo.Read(quilt).Roles.Single(r => r.Id == need.Roles[^1]).Name;
            var row = Regex.Match(text, $@"\b{need.Letter} {Regex.Escape(fabric.Name)}{(fabric.Number is null ? "" : @" \(" + fabric.Number + @"\)")}.*? {Regex.Escape(role)} {Number} yd");
            Assert.True(row.Success, need.Letter);
            Assert.Equal(need.Length, Inches(row.Groups[1].Value) * 36);
        }

        var yards = Regex.Matches(text, $"{Number} yd");
        Assert.Equal(booklet.Plan.Needs.Lengths.Length, yards.Count);
        var batting = Regex.Match(text, $"Batting .*? {Number} × {Number} in");
        Assert.Equal(booklet.Plan.Needs.Batting!.Width, Inches(batting.Groups[1].Value));
        Assert.Equal(booklet.Plan.Needs.Batting!.Height, Inches(batting.Groups[2].Value));
    }

    [Theory, MemberData(nameof(Booklets))]
    public void StripsAndPiecesOfTheCuttingChartAddUpToThePlan(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var text = booklet.Chapter("Cutting", "Labels");
        foreach (var cloth in booklet.Plan.Cloths)
        {
            var start = text.IndexOf($"Fabric {cloth.Letter}, ", StringComparison.Ordinal);
            var next = booklet.Plan.Cloths.SkipWhile(c => c != cloth).Skip(1).FirstOrDefault();
            var end = next is null ? text.Length : text.IndexOf($"Fabric {next.Letter}, ", StringComparison.Ordinal);
            CheckCloth(cloth, booklet.Plan, text[start..end]);
        }
    }

    private static void CheckCloth(ClothPlan cloth, QuiltPlan plan, string text)
    {
        var head = Regex.Match(text, $"{Number} yd, of which the cuts below use {Number} in");
        Assert.Equal(cloth.Purchase, Inches(head.Groups[1].Value) * 36);
        Assert.Equal(cloth.Cut, Inches(head.Groups[2].Value));

        // Strips: number and height of each setting of the ruler, in order, what they become, and the cloth used so far.
        var strips = Regex.Matches(text, $@"Cut (\d+) strips? {Number} in × WOF");
        var settings = cloth.Strips.GroupBy(s => s.Height).ToArray();
        Assert.Equal(
            settings.Select(same => (same.Sum(s => s.Times), same.Key)),
            strips.Select(m => (Count(m.Groups[1].Value), Inches(m.Groups[2].Value)))
        );
        var squared = Inches(Regex.Match(text, $"Square one end of the cloth; {Number} in").Groups[1].Value);
        Assert.Equal(cloth.Terms.Straightening, squared);
        Length[] used = [squared, .. Regex.Matches(text, $"{Number} in used so far").Select(m => Inches(m.Groups[1].Value))];
        Assert.Equal(strips.Count + 1, used.Length);
        for (var i = 0; i < strips.Count; i++)
        {
            Assert.Equal(used[i] + (settings[i].Key * settings[i].Sum(s => s.Times)), used[i + 1]);
            var until = i + 1 < strips.Count ? strips[i + 1].Index : text.Length;
            int[] shares = [.. Regex.Matches(text[strips[i].Index..until], Shares).Select(m => m.Groups[1].Value == "one" ? 1 : Count(m.Groups[1].Value))];
            Assert.Equal(settings[i].Count() == 1 ? [] : settings[i].Select(s => s.Times), shares);
        }

        Assert.Equal(cloth.Cut, used[^1]);

        // Pieces: what the lines ask for is what the plan demands, class by class.
        var cut = plan.Pieces.ToDictionary(p => p.Label, _ => 0);
        foreach (Match m in Regex.Matches(text, $@"(\d+) (?:squares? of {Number}|of {Number} × {Number}) \(([A-Z]+\d+)"))
        {
            var piece = plan.Pieces.Single(p => p.Label == m.Groups[5].Value);
            var sides = m.Groups[2].Success
                ? (Inches(m.Groups[2].Value), Inches(m.Groups[2].Value))
                : (Inches(m.Groups[3].Value), Inches(m.Groups[4].Value));
            Assert.True(sides == (piece.Width, piece.Height) || sides == (piece.Height, piece.Width), m.Value);
            cut[piece.Label] += Count(m.Groups[1].Value);
        }

        foreach (Match m in Regex.Matches(text, $@"Cut (\d+) strips? {Number} in × WOF(?: \(|. Keep (\d+) of them whole \()([A-Z]+\d+)"))
        {
            var piece = plan.Pieces.Single(p => p.Label == m.Groups[4].Value);
            Assert.Equal(piece.Height, Inches(m.Groups[2].Value));
            Assert.Equal(piece.Width, cloth.Terms.StripLength);
            cut[piece.Label] += Count(m.Groups[m.Groups[3].Success ? 3 : 1].Value);
        }

        foreach (Match m in Regex.Matches(text, @"Keep (?:the other (\d+|one)|(\d+) more of them) whole \(([A-Z]+\d+)"))
        {
            cut[m.Groups[3].Value] += m.Groups[2].Success ? Count(m.Groups[2].Value) : m.Groups[1].Value == "one" ? 1 : Count(m.Groups[1].Value);
        }

        Assert.Equal(
            plan.Pieces.Where(p => cloth.Roles.Contains(p.Role)).Select(p => (p.Label, p.ToCut)),
            cut.Where(c => c.Value > 0).Select(c => (c.Key, c.Value))
        );
    }

    [Theory, MemberData(nameof(Booklets))]
    public void EachStackHasItsLabel(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var text = booklet.Chapter("Labels", "Laying it out");
        var labels = Regex.Matches(text, $@"\b([A-Z]+\d+) [A-Z]+ (\d+) of {Number} × {Number} in Fabric ([A-Z]+)");
        Assert.Equal(
            booklet.Plan.Pieces.Select(p => (p.Label, p.ToCut, Length.Min(p.Width, p.Height), Length.Max(p.Width, p.Height))),
            labels.Select(m => (m.Groups[1].Value, Count(m.Groups[2].Value), Inches(m.Groups[3].Value), Inches(m.Groups[4].Value)))
        );
        Assert.All(labels, m => Assert.StartsWith(m.Groups[5].Value, m.Groups[1].Value, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Booklets))]
    public void EachStepHasItsCountAndSize(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var text = booklet.Chapter("Sewing the top", "Backing, batting and binding");
        var steps = Regex.Matches(text, $"measures {Number} × {Number} in");
        Assert.Equal(
            booklet.Plan.Sewing.Recipes.Select(r => r.Copies),
            Regex.Matches(text, @"Make (\d+)\.").Select(m => Count(m.Groups[1].Value))
        );
        // A triangle has no size of this kind, and a center that is squared up says so in its own words.
        Assert.Equal(
            booklet.Plan.Sewing.Recipes.Where(r => r.Outline is null && !text.Contains($"up the center to {LengthText.Inches(r.Width)} ×", StringComparison.Ordinal)).Select(r => (r.Width, r.Height)),
            steps.Select(m => (Inches(m.Groups[1].Value), Inches(m.Groups[2].Value)))
        );
    }

    [Theory, MemberData(nameof(Booklets))]
    public void TheFinishedSizeStandsOnTheCover(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var size = Regex.Match(booklet.Texts[0], $"finished {Number} by {Number} in");
        Assert.Equal(booklet.Plan.Design.Width, Inches(size.Groups[1].Value));
        Assert.Equal(booklet.Plan.Design.Height, Inches(size.Groups[2].Value));
        var blocks = Regex.Matches(booklet.Texts[0], @"(\d+) (?:[A-Z][A-Za-z -]+? )?blocks of");
        Assert.Equal(booklet.Plan.Design.Placements.Length, blocks.Sum(m => Count(m.Groups[1].Value)));
    }

    [Theory, MemberData(nameof(Booklets))]
    public void BackingBattingAndBindingAreThoseOfThePlan(string quilt, int colorway, PaperSize paper)
    {
        var booklet = PrintedBooklet.Of(quilt, colorway, paper);
        var text = booklet.Texts[^1];
        var (backing, binding) = (booklet.Plan.Backing, booklet.Plan.Binding);
        Assert.Contains("Backing", text, StringComparison.Ordinal);
        var panels = Regex.Match(text, $@"Cut (\d+) panels of {Number} in .*? with {Number} in seams that run (across|down)");
        Assert.Equal(
            (backing.Panels, backing.PanelLength, backing.Seam, backing.Across),
            (
                Count(panels.Groups[1].Value),
                Inches(panels.Groups[2].Value),
                Inches(panels.Groups[3].Value),
                panels.Groups[4].Value == "across"
            )
        );
        var size = Regex.Match(text, $"backing to {Number} × {Number} in: {Number} in beyond");
        Assert.Equal(
            (backing.Width, backing.Height, backing.Overhang),
            (Inches(size.Groups[1].Value), Inches(size.Groups[2].Value), Inches(size.Groups[3].Value))
        );
        Assert.Equal(backing.Purchase, Inches(Regex.Match(text, $"takes {Number} yd").Groups[1].Value) * 36);
        var strips = Regex.Match(text, $@"Join the (\d+) strips of {Number} in .*? at least {Number} in: the perimeter of {Number} in, and {Number} in more");
        Assert.Equal(
            (binding.Strips, binding.StripWidth, binding.Wanted, binding.Perimeter, binding.Allowance),
            (
                Count(strips.Groups[1].Value),
                Inches(strips.Groups[2].Value),
                Inches(strips.Groups[3].Value),
                Inches(strips.Groups[4].Value),
                Inches(strips.Groups[5].Value)
            )
        );
    }
}
