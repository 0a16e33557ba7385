using System.Text.RegularExpressions;
using Xunit;

namespace Kitwright.Tests.House;

/// <summary>Documents against the repository: links lead somewhere, sources are listed, and commands exist.</summary>
public sealed partial class DocumentsTest
{
    private static IEnumerable<SourceFile> Documents => SourceFiles.All.Where(f => f.Extension == ".md");

    [Fact]
    public void Links_inside_the_repository_lead_somewhere() =>
        Rule.Holds(
            from document in Documents
            from Match link in Link().Matches(Comment().Replace(document.Text, ""))
            let target = link.Groups[1].Value
            let path = Path.Combine(Repository.PathOf(), Path.GetDirectoryName(document.Path)!, target)
            where !target.Contains("://", StringComparison.Ordinal) && !File.Exists(path) && !Directory.Exists(path)
            select $"{document.Path}: {target}"
        );

    [Fact]
    public void Every_source_that_is_cited_is_listed_and_every_listed_one_is_cited()
    {
        var listed = Listed().Matches(Repository.Read("docs", "sources.md")).Select(m => m.Groups[1].Value).ToHashSet();
        var cited = SourceFiles
            .All.Where(f => f.Under("src") || f.Under("tests") || f.Under("data") || f.Under("bench") || f.Under("blocks"))
            .SelectMany(f => Cited().Matches(f.Text).Select(m => m.Groups[1].Value).Concat(f.Under("data") ? CitedInData(f.Text) : []))
            .Where(id => !id.StartsWith("A-Z", StringComparison.Ordinal))
            .ToHashSet();
        Assert.NotEmpty(listed);
        Rule.Holds(cited.Except(listed).Select(id => $"[{id}] is not in docs/sources.md").Concat(listed.Except(cited).Select(id => $"nothing cites [{id}]")));
    }

    private static IEnumerable<string> CitedInData(string text) =>
        SourceField().Matches(text).SelectMany(m => Id().Matches(m.Value).Select(id => id.Groups[1].Value));

    [Fact]
    public void Commands_of_the_script_are_the_ones_that_documents_name()
    {
        var script = Repository.Read("dev");
        Rule.Holds(
            from document in Documents
            from Match command in Regex.Matches(document.Text, @"\./dev (\w+)").DistinctBy(m => m.Value)
            where !Regex.IsMatch(script, $@"(?m)^\s+{command.Groups[1].Value}\)")
            select $"{document.Path}: {command.Value}"
        );
    }

    [GeneratedRegex(@"\]\(([^)#\s]+)[^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"<!--[\s\S]*?-->|```[\s\S]*?```|`[^`\n]*`")]
    private static partial Regex Comment();

    [GeneratedRegex(@"(?m)^\| ([A-Z0-9][A-Z0-9-]*) \| [^|]+ \| [^|]* \| [^|]* \| [^|]+ \|$")]
    private static partial Regex Listed();

    [GeneratedRegex(@"\[([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*)\]")]
    private static partial Regex Cited();

    [GeneratedRegex("\"sources?\": (\\[[^\\]]*\\]|\"[^\"]+\")")]
    private static partial Regex SourceField();

    [GeneratedRegex("\"([A-Z][A-Z0-9-]+)\"")]
    private static partial Regex Id();
}
