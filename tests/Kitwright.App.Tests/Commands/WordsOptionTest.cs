using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Kitwright.App.Tests.Commands;

/// <summary>Commands and prints in British words: what differs is the words, and nothing else.</summary>
public sealed partial class WordsOptionTest
{
    /// <summary>As both sides of the trade write them (from memory).</summary>
    private static readonly Dictionary<string, string> British = new()
    {
        ["batting"] = "wadding",
        ["selvage"] = "selvedge",
        ["selvages"] = "selvedges",
        ["colorway"] = "colourway",
        ["center"] = "centre",
        ["centers"] = "centres",
        ["color"] = "colour",
        ["muslin"] = "calico",
        ["mitered"] = "mitred",
        ["neighbor"] = "neighbour",
        ["neighbors"] = "neighbours",
    };

    [Theory]
    [InlineData("plan", "--why", "--form", "yardage")]
    [InlineData("sew")]
    [InlineData("sizes", "--batting", "queen")]
    [InlineData("plan", "--colorway", "nobody’s")]
    public async Task What_a_command_answers_is_reworded(params string[] args)
    {
        var american = await Run.Of([args[0], Run.Stars, .. args[1..]]);
        var british = await Run.Of([args[0], Run.Stars, .. args[1..], "--words", "british"]);

        Assert.Equal(american.Exit, british.Exit);
        Assert.Equal(Reworded(american.Output), british.Output);
    }

    [Fact]
    public async Task Batting_is_wadding_and_selvages_are_selvedges()
    {
        // A border that is cut along the selvage says so.
        var quilt = JsonNode.Parse(await File.ReadAllTextAsync(Run.Stars, TestContext.Current.CancellationToken))!;
        quilt["borders"]![0]!["grain"] = "lengthwise";
        var path = Scratch.Written(quilt.ToJsonString());
        var american = (await Run.Of("plan", path)).Output;
        var british = (await Run.Of("plan", path, "--words", "british")).Output;

        Assert.Contains("Batting: ", american, StringComparison.Ordinal);
        Assert.Contains("Wadding: ", british, StringComparison.Ordinal);
        Assert.DoesNotContain("atting", british, StringComparison.Ordinal);
        Assert.Contains("along the selvage", american, StringComparison.Ordinal);
        Assert.Contains("along the selvedge", british, StringComparison.Ordinal);
    }

    [Fact]
    public async Task So_is_the_booklet()
    {
        var path = Scratch.Written("");
        Assert.Equal(0, (await Run.Of("booklet", Run.Stars, "--out", path, "--words", "british")).Exit);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(path);
        var text = string.Join(' ', pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));

        Assert.Contains("wadding", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("selvedge", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(@"(?i)\b(batting|selvages?|colorways?|centers?)\b", text);
    }

    private static string Reworded(string text) =>
        Word().Replace(
            text,
            match =>
                !British.TryGetValue(match.Value.ToLowerInvariant(), out var word) ? match.Value
                : char.IsUpper(match.Value[0]) ? char.ToUpperInvariant(word[0]) + word[1..]
                : word
        );

    // An option keeps its name.
    [GeneratedRegex(@"(?<!--)\b\p{L}+\b")]
    private static partial Regex Word();
}
