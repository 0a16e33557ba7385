using Xunit;

namespace Kitwright.Tests;

/// <summary>The tables of data/faulty: which file gives which rule at which place.</summary>
internal static class FaultyFiles
{
    public static TheoryData<string, string, string> Table(string folder)
    {
        var rows = new TheoryData<string, string, string>();
        foreach (var line in Repository.Read("data", "faulty", folder, "README.md").Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal)))
        {
            var cells = line.Split('|').Select(c => c.Trim(' ', '`')).ToArray();
            rows.Add(cells[1], cells[2], cells[3] == "(root)" ? "" : cells[3]);
        }

        return rows;
    }

    public static void AssertTableListsEveryFile(string folder, string pattern) =>
        Assert.Equal(
            Directory.GetFiles(Repository.PathOf("data", "faulty", folder), pattern).Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal),
            Table(folder).Select(row => row.Data.Item1).Order(StringComparer.Ordinal)
        );
}
