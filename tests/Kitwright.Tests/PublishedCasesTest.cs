using System.Text.RegularExpressions;
using Kitwright.Tests.House;
using Xunit;

namespace Kitwright.Tests;

/// <summary>Worked examples of the trade: each is met by a test that names it, or its difference is told with the reason.</summary>
public sealed class PublishedCasesTest
{
    [Fact]
    public void Every_published_case_is_met_or_its_difference_told()
    {
        var tests = Directory
            .EnumerateFiles(Repository.PathOf("tests"), "*Test.cs", SearchOption.AllDirectories)
            .Select(File.ReadAllText)
            .ToArray();
        var differ = Differences().ToArray();
        Rule.Holds(
            from entry in Cases.Open("published-quilts").GetProperty("cases").EnumerateArray()
            let id = entry.GetProperty("id").GetString()!
            let source = entry.GetProperty("source").GetString()!
            where !differ.Contains((id, source)) && !tests.Any(text => Names(text, id, source))
            select $"{id} of {source} is in no test and not in docs/sources.md"
        );
    }

    // "[SYL-B] B3", "[PWT1], [PWT2] W8": the source, then the id before the next sentence ends.
    private static bool Names(string text, string id, string source) =>
        Regex.IsMatch(text, $@"\[{Regex.Escape(source)}\][^.\n]*?\b{id}\b");

    /// <summary>Cases and sources of the first column: "W3, KSS", "C2, IFEEDS; C6, MARTY".</summary>
    private static IEnumerable<(string Id, string Source)> Differences() =>
        from row in Repository.Read("docs", "sources.md").Split("## Published cases that differ")[1].Split("\n## ")[0].Split('\n')
        where row.StartsWith("| ", StringComparison.Ordinal)
        from match in Regex.Matches(row.Split('|')[1], @"([A-Z]\d+), ([A-Z0-9-]+)")
        select (match.Groups[1].Value, match.Groups[2].Value);
}
