using System.Text.RegularExpressions;
using Kitwright.Words;

namespace Kitwright.App.Tests.Web;

public sealed partial class PageWordsTest
{
    [Fact]
    public void Every_template_that_a_page_names_exists()
    {
        var named = Sources().SelectMany(text => Said().Matches(text)).Select(match => match.Groups[1].Value);

        Assert.Empty(named.Where(key => !Catalog.English.Has(key)).Distinct());
    }

    private static IEnumerable<string> Sources()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        Assert.SkipWhen(folder is null, "skipped: the sources are absent");
        return Directory
            .EnumerateFiles(Path.Combine(folder.FullName, "src", "Kitwright.App"), "*.*", SearchOption.AllDirectories)
            .Where(file => file.EndsWith(".razor", StringComparison.Ordinal) || file.EndsWith(".cs", StringComparison.Ordinal))
            .Select(File.ReadAllText);
    }

    [GeneratedRegex("(?:Say|Message\\.Of)\\(\"([a-z][^\"{]*)\"")]
    private static partial Regex Said();
}
