using System.Collections.Immutable;
using System.Text;

namespace Kitwright.Shop.Demo;

/// <summary>The files of the folder <c>examples</c>, carried inside the program.</summary>
public static class DemoFiles
{
    private const string Quilts = "examples/quilts/";
    private const string Stock = "examples/stock.csv";

    /// <summary>Quilt files by name, without their ending.</summary>
    public static ImmutableArray<(string Name, string Json)> QuiltFiles() =>
        [
            .. typeof(DemoFiles).Assembly.GetManifestResourceNames()
                .Where(name => name.StartsWith(Quilts, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name => (Path.GetFileNameWithoutExtension(name), Encoding.UTF8.GetString(Bytes(name)))),
        ];

    public static byte[] StockFile() => Bytes(Stock);

    private static byte[] Bytes(string name)
    {
        using var stream = typeof(DemoFiles).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
