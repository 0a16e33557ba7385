using Kitwright.Findings;

namespace Kitwright.App.Commands;

/// <summary>Reads a file that the user named; what goes wrong is a finding, never an exception.</summary>
internal static class InputFile
{
    /// <summary>No input of this tool is larger; a bigger file is refused before it is read.</summary>
    private const long LargestBytes = 64 * 1024 * 1024;

    public static Checked<byte[]> Read(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                return Checked<byte[]>.Failed(Finding.Of("file.missing", path, ("path", path)));
            }

            return file.Length > LargestBytes
                ? Checked<byte[]>.Failed(Finding.Of("file.too-large", path, ("path", path), ("megabytes", LargestBytes / 1024 / 1024)))
                : Checked<byte[]>.Of(File.ReadAllBytes(path));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Checked<byte[]>.Failed(Finding.Of("file.unreadable", path, ("path", path), ("why", fault.Message)));
        }
    }

    /// <summary>What is left of a file that could not be written; where it could not even be begun, nothing is.</summary>
    private static void Remove(string part)
    {
        try
        {
            File.Delete(part);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // The finding already says why.
        }
    }

    /// <summary>Writes the whole file or nothing: to a temporary neighbor first, then in its place.</summary>
    public static Finding? Write(string path, Action<Stream> content)
    {
        var part = path + ".part";
        try
        {
            using (var stream = File.Create(part))
            {
                content(stream);
            }

            File.Move(part, path, overwrite: true);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Remove(part);
            return Finding.Of("file.unwritable", path, ("path", path), ("why", fault.Message));
        }
    }
}
