using Kitwright.Print.Drawing;
using Kitwright.Quilts;

namespace Kitwright.Print.Tests;

/// <summary>The demo quilt and shelf, as the repository carries them.</summary>
internal static class Demo
{
    public static string Root { get; } = FindRoot();

    public static Quilt Quilt { get; } =
        QuiltFile.Read(File.ReadAllText(Path.Combine(Root, "examples", "quilts", "ostrel-bay-stars.json"))).Value!;

    /// <summary>Some color for a role, always the same.</summary>
    public static Paint Fill(string role) => Paint.Of(new((byte)(role.Length * 20), (byte)(role[0] * 2), 120));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
