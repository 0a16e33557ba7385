using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Kitwright.Fabrics;
using Kitwright.Quilts;
using Kitwright.Stock;

namespace Kitwright.App.Planning;

/// <summary>The demo shop that ships with the program: the quilts and the stock file of the folder <c>examples</c>.</summary>
public static partial class ExampleShop
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "examples");

    public static ImmutableArray<(string Slug, Quilt Quilt)> Quilts() =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Folder, "quilts"), "*.json")
                .Order(StringComparer.Ordinal)
                .Select(path => (Slug(Path.GetFileNameWithoutExtension(path)), Read(path))),
        ];

    public static Shelf Shelf() =>
        StockCsv.Read(File.ReadAllBytes(Path.Combine(Folder, "stock.csv"))).Value
        ?? throw new InvalidDataException("The demo shop's stock file has faults.");

    private static Quilt Read(string path) =>
        QuiltFile.Read(File.ReadAllText(path)).Value
        ?? throw new InvalidDataException($"The demo quilt {Path.GetFileName(path)} has faults.");

    /// <summary>A name as it stands in addresses: lower case letters, digits and single hyphens.</summary>
    public static string Slug(string name) => NotInSlug().Replace(name.ToLowerInvariant(), "-").Trim('-');

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotInSlug();
}
