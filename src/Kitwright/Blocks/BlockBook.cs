using System.Collections.Immutable;

namespace Kitwright.Blocks;

/// <summary>All traditional blocks that come with the program, from the files of the folder <c>blocks</c>.</summary>
public static class BlockBook
{
    private static readonly Lazy<ImmutableArray<BookBlock>> Loaded = new(Load);

    /// <summary>By family, then by name.</summary>
    public static ImmutableArray<BookBlock> All => Loaded.Value;

    public static BookBlock? Find(string id) => All.FirstOrDefault(block => block.Id == id);

    private static ImmutableArray<BookBlock> Load()
    {
        var assembly = typeof(BlockBook).Assembly;
        var blocks = new List<BookBlock>();
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith("Blocks/", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            var read = BlockFile.Read(reader.ReadToEnd());
            blocks.Add(read.Value ?? throw new InvalidDataException($"{name}: {read.Findings[0].Rule} at {read.Findings[0].Place}"));
        }

        return [.. blocks.OrderBy(b => b.Family).ThenBy(b => b.Name, StringComparer.Ordinal)];
    }
}
