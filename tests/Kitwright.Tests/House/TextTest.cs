using System.Text.RegularExpressions;
using Xunit;

namespace Kitwright.Tests.House;

/// <summary>What no file of the repository says.</summary>
public sealed partial class TextTest
{
    // Put together here so that this file does not breach its own rules.
    private static readonly Regex Registry = new(string.Join('|', "nuget" + @"\.org", "npm" + @"js\.", "registry" + @"\.\w+\.\w+", "deb" + @"\.debian", "pypi" + @"\.", "crates" + @"\.io"), RegexOptions.IgnoreCase);

    private static readonly Regex MachinePath = new(@"(?<![\w.~$}])/(" + "root|work|ho" + @"me)/\w");

    // US spelling; readers of input may accept the other one, so string literals of code are not looked at.
    private static readonly Regex British = new(
        string.Join('|', "col" + "our", "cent" + "re", "optim" + "is", "neigh" + "bour", "gr" + "ey", "mit" + "re", "lab" + "our", "behavi" + "our", "catal" + "ogue", "fav" + "our", "lic" + "ence", "organ" + "is", "minim" + "is", "maxim" + "is", "normal" + "is"),
        RegexOptions.IgnoreCase
    );

    [Fact]
    public void No_package_registry_is_named() => Rule.Holds(Matches(Registry, f => f.Text));

    [Fact]
    public void No_path_of_one_machine_is_named() => Rule.Holds(Matches(MachinePath, f => f.Text));

    [Fact]
    public void Spelling_is_American() =>
        Rule.Holds(
            Matches(
                British,
                f => (f.Extension is ".cs" or ".razor" or ".js" ? Literal().Replace(f.Text, "") : f.Text).Replace("Kitwright.Optimise", "", StringComparison.Ordinal)
                    // As a library spells them.
                    .Replace("JoinStyle.Mitre", "", StringComparison.Ordinal)
                    .Replace("mitreLimit", "", StringComparison.Ordinal)
            )
        );

    private static IEnumerable<string> Matches(Regex pattern, Func<SourceFile, string> text) =>
        from file in SourceFiles.All
        where !Cites.Contains(file.Path)
        from Match match in pattern.Matches(text(file))
        select $"{file.Path}: {match.Value}";

    /// <summary>Titles and addresses of sources stand as they were published, and British words in the list of them.</summary>
    private static readonly string[] Cites = ["docs/sources.md", "src/Kitwright/Words/en-gb.json"];

    [GeneratedRegex("\"(?:[^\"\\\\\n]|\\\\.)*\"|'[^'\n]*'")]
    private static partial Regex Literal();
}
