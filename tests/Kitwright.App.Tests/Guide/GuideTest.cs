using System.Text.RegularExpressions;
using Kitwright.App.Tests.Browser;
using Kitwright.App.Tests.Commands;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Guide;

/// <summary>
/// The guide against the pages it shows: every label that it names stands on its page, and its pictures are there. With
/// KITWRIGHT_GUIDE=write the pictures are made anew.
/// </summary>
public sealed partial class GuideTest(Chromium chromium)
{
    private static readonly string Folder = Run.File("docs", "guide");

    private static readonly bool Writes = Environment.GetEnvironmentVariable("KITWRIGHT_GUIDE") == "write";

    public static TheoryData<string> Sections => [.. Parts().Select(part => part.Title)];

    [Theory]
    [MemberData(nameof(Sections))]
    public async Task A_section_names_what_its_page_shows(string title)
    {
        var part = Parts().Single(p => p.Title == title);
        await using var visit = await chromium.Open(part.Page, 1000);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);

        foreach (var label in part.Labels)
        {
            await visit.Page.WaitForFunctionAsync("label => (" + Said + ").includes(label)", label);
        }

        if (Writes)
        {
            Directory.CreateDirectory(Path.Combine(Folder, "pictures"));
            await visit.Page.SetViewportSizeAsync(1000, 720);
            // Where something is tried, the picture is of what that moves.
            await visit.Page.EvaluateAsync("() => document.querySelector('.trial h2')?.parentElement.scrollIntoView({ block: 'end' })");
            await visit.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder, part.Picture), Type = ScreenshotType.Jpeg, Quality = 70 });
        }

        byte[] head = [.. (await File.ReadAllBytesAsync(Path.Combine(Folder, part.Picture), TestContext.Current.CancellationToken)).Take(3)];
        Assert.Equal([0xFF, 0xD8, 0xFF], head);
    }

    [Fact]
    public void Every_picture_belongs_to_a_section()
    {
        var shown = Parts().Select(part => Path.GetFileName(part.Picture)).Order();
        Assert.Equal(shown, Directory.GetFiles(Path.Combine(Folder, "pictures")).Select(Path.GetFileName).Order());
    }

    // What a page says, to the eye or to the ear, with white space and no-break spaces made one.
    private const string Said = """
        [document.body.innerText, ...[...document.querySelectorAll("[aria-label], option, summary, label, input[type=submit]")]
          .map((part) => `${part.getAttribute("aria-label") ?? ""} ${part.textContent}`)].join(" ").replace(/\s+/g, " ")
        """;

    private static IEnumerable<Part> Parts() =>
        File.ReadAllText(Path.Combine(Folder, "README.md"))
            .Split("\n## ")
            .Skip(1)
            .Select(text => new Part(
                text.Split('\n')[0],
                Page().Match(text).Groups[1].Value,
                Picture().Match(text).Groups[1].Value,
                [.. Label().Matches(text).Select(match => match.Groups[1].Value.ReplaceLineEndings(" "))]
            ));

    private sealed record Part(string Title, string Page, string Picture, string[] Labels);

    [GeneratedRegex("<!-- page: (.*) -->")]
    private static partial Regex Page();

    [GeneratedRegex(@"!\[[^\]]+\]\(([^)]+)\)")]
    private static partial Regex Picture();

    [GeneratedRegex(@"\*\*([^*]+)\*\*")]
    private static partial Regex Label();
}
