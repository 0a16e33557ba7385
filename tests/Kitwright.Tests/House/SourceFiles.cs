namespace Kitwright.Tests.House;

/// <summary>One text file of the repository by its path from the root, with forward slashes.</summary>
internal sealed record SourceFile(string Path, string Text)
{
    public string Name => System.IO.Path.GetFileName(Path);
    public string Extension => System.IO.Path.GetExtension(Path);
    public bool Under(string folder) => Path.StartsWith(folder + "/", StringComparison.Ordinal);
}

/// <summary>All text files that belong to the repository: what builds, tests and editors leave behind does not.</summary>
internal static class SourceFiles
{
    private static readonly string[] LeftBehind = ["bin", "obj", ".git", ".vs", "TestResults", "artifacts", "out", "BenchmarkDotNet.Artifacts"];

    private static readonly string[] Extensions =
    [
        "", ".cs", ".razor", ".js", ".css", ".html", ".csproj", ".props", ".slnx", ".json", ".md", ".csv", ".txt", ".svg", ".yml", ".editorconfig", ".gitignore",
    ];

    public static IReadOnlyList<SourceFile> All { get; } = [.. Below(new(Repository.PathOf())).OrderBy(f => f.Path, StringComparer.Ordinal)];

    public static IEnumerable<SourceFile> CSharp => All.Where(f => f.Extension == ".cs");

    private static IEnumerable<SourceFile> Below(DirectoryInfo folder) =>
        folder
            .EnumerateFiles()
            .Where(f => Extensions.Contains(f.Extension))
            .Select(f => new SourceFile(Path.GetRelativePath(Repository.PathOf(), f.FullName).Replace('\\', '/'), File.ReadAllText(f.FullName)))
            .Concat(folder.EnumerateDirectories().Where(d => !LeftBehind.Contains(d.Name)).SelectMany(Below));
}
