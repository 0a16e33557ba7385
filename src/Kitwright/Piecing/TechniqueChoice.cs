using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.Piecing;

/// <summary>
/// Which technique makes a unit: the quilt's word for its kind and one of its roles (<c>half-square/star</c>), then for
/// its kind, then the shop's, then the usual one.
/// </summary>
internal sealed record TechniqueChoice(ImmutableSortedDictionary<string, string> Quilt, ImmutableSortedDictionary<string, string> Shop)
{
    public string Of(UnitKind kind, Region region)
    {
        var roles = region.Items.Select(item => item.Role).OfType<string>().Distinct();
        return Stated(kind, Quilt, roles) ?? Stated(kind, Shop, roles) ?? kind.Techniques[0].Name;
    }

    private static string? Stated(UnitKind kind, ImmutableSortedDictionary<string, string> words, IEnumerable<string> roles) =>
        roles
            .Select(role => $"{kind.Name}/{role}")
            .Append(kind.Name)
            .Select(key => words.GetValueOrDefault(key))
            .FirstOrDefault(technique => technique is not null && kind.Has(technique));

    public bool Wants(string technique) => Quilt.ContainsValue(technique) || Shop.ContainsValue(technique);

    /// <summary>What the quilt asks for that is in no book: said, and left aside.</summary>
    public IEnumerable<Finding> Unknown() =>
        from word in Quilt
        where TechniqueBook.Kind(word.Key.Split('/')[0])?.Has(word.Value) != true
        select Finding.NoteOf("piecing.technique-unknown", $"/techniques/{word.Key}", ("unit", word.Key), ("technique", word.Value));
}
