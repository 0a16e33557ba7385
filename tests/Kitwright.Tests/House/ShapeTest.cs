using System.Text.RegularExpressions;
using Xunit;

namespace Kitwright.Tests.House;

/// <summary>How source files look: their length, their names, and what they declare.</summary>
public sealed partial class ShapeTest
{
    /// <summary>Longer files, each with its reason.</summary>
    private static readonly Dictionary<string, string> Longer = [];

    private static IEnumerable<SourceFile> Code =>
        SourceFiles.All.Where(f => f.Extension is ".cs" or ".razor" or ".js" or ".css" && !IsMade(f));

    // By the tools of EF Core: migrations, and the model made ahead.
    private static bool IsMade(SourceFile file) =>
        file.Path.Contains("/Migrations/", StringComparison.Ordinal) || file.Path.Contains("/Compiled/", StringComparison.Ordinal);

    [Fact]
    public void No_file_is_longer_than_400_lines_without_a_reason() =>
        Rule.Holds(
            from file in Code
            let lines = file.Text.Count(c => c == '\n')
            where lines > 400 && !Longer.ContainsKey(file.Path)
            select $"{file.Path} has {lines} lines"
        );

    [Fact]
    public void No_reason_is_kept_for_a_file_that_is_short_or_gone() =>
        Rule.Holds(
            from path in Longer.Keys
            where !Code.Any(f => f.Path == path && f.Text.Count(c => c == '\n') > 400)
            select $"{path} needs no reason"
        );

    /// <summary>Length.cs declares Length; PlanJson.Geometry.cs a part of PlanJson.</summary>
    [Fact]
    public void A_file_is_named_after_what_it_declares() =>
        Rule.Holds(
            from file in SourceFiles.CSharp
            where !IsMade(file) && file.Name is not ("Program.cs" or "AssemblyInfo.cs")
            let name = file.Name.Split('.')[0]
            where !Regex.IsMatch(file.Text, $@"\b(class|record|record struct|struct|interface|enum)\s+{name}\b")
            select $"{file.Path} declares no {name}"
        );

    /// <summary>Names that say nothing, where one idea would have a name of its own.</summary>
    [Fact]
    public void No_name_is_empty_of_meaning() =>
        Rule.Holds(
            from file in Code
            from part in file.Path.Split('/')
            where Meaningless().IsMatch(part.Split('.')[0])
            select file.Path
        );

    [Fact]
    public void Classes_are_sealed_static_or_abstract_and_structs_are_readonly() =>
        Rule.Holds(
            from file in SourceFiles.CSharp
            where file.Under("src") && !IsMade(file)
            from Match match in Declaration().Matches(file.Text)
            let modifiers = match.Groups["modifiers"].Value
            let isStruct = match.Groups["kind"].Value.EndsWith("struct", StringComparison.Ordinal)
            where isStruct ? !ReadOnly().IsMatch(modifiers) : !Closed().IsMatch(modifiers)
            select $"{file.Path}: {match.Value.Trim()}"
        );

    [Fact]
    public void Namespaces_are_file_scoped() =>
        Rule.Holds(
            from file in SourceFiles.CSharp
            where !IsMade(file) && Regex.IsMatch(file.Text, @"(?m)^namespace [\w.]+\s*$")
            select file.Path
        );

    [Fact]
    public void Nothing_is_left_to_be_done_later() =>
        Rule.Holds(from file in Code from Match match in Later().Matches(file.Text) select $"{file.Path}: {match.Value}");

    [GeneratedRegex("(Manager|Helper|Util|Utility|Utilities|Common|Service|Base|Processor|Info)s?$|^(Data|Models|Dtos|Shared)$")]
    private static partial Regex Meaningless();

    [GeneratedRegex(@"(?m)^[ \t]*(?<modifiers>((public|internal|private|protected|file|static|sealed|abstract|readonly|ref|partial)\s+)*)(?<kind>class|record struct|struct|record)\s+[A-Z]\w*")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"\b(sealed|static|abstract)\b")]
    private static partial Regex Closed();

    // A ref struct is a cursor over a text: it lives on the stack and moves.
    [GeneratedRegex(@"\b(readonly|ref)\b")]
    private static partial Regex ReadOnly();

    [GeneratedRegex(@"\b(TO" + "DO|FIX" + "ME|HA" + @"CK)\b")]
    private static partial Regex Later();
}
