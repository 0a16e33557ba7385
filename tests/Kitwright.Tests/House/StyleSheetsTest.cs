using Xunit;

namespace Kitwright.Tests.House;

/// <summary>A browser drops what follows a brace that is missing, and says nothing.</summary>
public sealed class StyleSheetsTest
{
    [Fact]
    public void Every_rule_is_closed_before_the_next_begins() =>
        Rule.Holds(
            from path in Directory.EnumerateFiles(Repository.PathOf("src", "Kitwright.App", "wwwroot", "css"), "*.css")
            let depths = Depths(File.ReadAllText(path)).ToList()
            // A query for media holds rules; nothing here lies deeper.
            where depths[^1] != 0 || depths.Min() < 0 || depths.Max() > 2 || Nested(File.ReadAllLines(path))
            select Path.GetFileName(path)
        );

    private static IEnumerable<int> Depths(string text)
    {
        var depth = 0;
        return text.Select(c => depth += c == '{' ? 1 : c == '}' ? -1 : 0);
    }

    private static bool Nested(string[] lines)
    {
        var depth = 0;
        foreach (var line in lines)
        {
            if (depth > 0 && line.Length > 0 && !char.IsWhiteSpace(line[0]) && line[0] != '}')
            {
                return true;
            }

            depth += line.Count(c => c == '{') - line.Count(c => c == '}');
        }

        return false;
    }
}
