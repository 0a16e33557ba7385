using Kitwright.Quilts;
using Kitwright.Tests;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>The quilts of the demo shop.</summary>
internal static class DemoQuilts
{
    /// <summary>By the names of their files.</summary>
    public static IEnumerable<Quilt> All() =>
        Directory.GetFiles(Repository.PathOf("examples", "quilts"), "*.json").Order(StringComparer.Ordinal).Select(path => QuiltFile.Read(File.ReadAllText(path)).Value!);

    /// <param name="file">Without its ending.</param>
    public static Quilt Named(string file) => QuiltFile.Read(Repository.Read("examples", "quilts", file + ".json")).Value!;
}
