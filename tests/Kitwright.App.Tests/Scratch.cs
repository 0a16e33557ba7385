namespace Kitwright.App.Tests;

/// <summary>Files and folders of this run of the tests alone, gone when the run ends.</summary>
internal static class Scratch
{
    private static readonly string Root = Make();

    /// <summary>A new, empty folder; its path.</summary>
    public static string Folder()
    {
        var path = Path.Combine(Root, Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(path);
        return path;
    }

    /// <summary>A file in a folder of its own, not made yet; its path.</summary>
    public static string File(string name) => Path.Combine(Folder(), name);

    /// <summary>A new file with this text; its path.</summary>
    public static string Written(string text)
    {
        var path = File("written");
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    private static string Make()
    {
        var folder = Directory.CreateTempSubdirectory("kitwright-tests-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Delete(folder);
        return folder;
    }

    // A file that something still holds is left to the system's own housekeeping: the run is over.
    private static void Delete(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception kept) when (kept is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{folder}: {kept.Message}");
        }
    }
}
