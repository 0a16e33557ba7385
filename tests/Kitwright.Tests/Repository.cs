namespace Kitwright.Tests;

/// <summary>Files of the repository, found upward from where the tests run.</summary>
internal static class Repository
{
    private static readonly string Root = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(PathOf(parts));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run inside the repository.");
    }
}
