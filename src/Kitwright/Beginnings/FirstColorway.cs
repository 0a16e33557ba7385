using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Quilts;

namespace Kitwright.Beginnings;

/// <summary>
/// A first colorway for a quilt that has none, by value alone: light roles from the light end of the shelf, dark ones
/// from the dark end, the others between; binding and cornerstones as the darkest patch, sashing as the lightest. Something
/// to look at and to change, no advice.
/// </summary>
public static class FirstColorway
{
    /// <summary>Null where the shelf is empty. Fabrics without a bolt are left out while there are others.</summary>
    public static Colorway? Of(Quilt quilt, Shelf shelf, string name)
    {
        var stocked = shelf.Bolts.Where(b => b.OnHand.Sign > 0).Select(b => b.Fabric).ToHashSet(StringComparer.Ordinal);
        var fabrics = shelf.Fabrics.Where(f => stocked.Contains(f.Number)).ToList();
        if (fabrics.Count == 0)
        {
            fabrics = [.. shelf.Fabrics];
        }

        if (fabrics.Count == 0)
        {
            return null;
        }

        // From light to dark.
        fabrics.Sort((a, b) => (Lightness.Of(b.Color), a.Number).CompareTo((Lightness.Of(a.Color), b.Number)));
        var chosen = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var inBlocks = quilt.Blocks.SelectMany(b => b.Patches).Select(p => p.Role).ToHashSet(StringComparer.Ordinal);
        var patched = quilt.Roles.Where(role => inBlocks.Contains(role.Id)).ToList();
        foreach (var value in new Value?[] { Value.Light, Value.Medium, null, Value.Dark })
        {
            Spread([.. patched.Where(role => role.Value == value)], Share(fabrics, value), chosen);
        }

        var lightest = patched.Count == 0 ? fabrics[0].Number : chosen[patched[0].Id];
        foreach (var role in patched)
        {
            lightest = Place(chosen[role.Id]) < Place(lightest) ? chosen[role.Id] : lightest;
        }

        var darkest = patched.Select(role => chosen[role.Id]).DefaultIfEmpty(fabrics[^1].Number).MaxBy(Place)!;
        foreach (var role in quilt.Roles.Where(role => !inBlocks.Contains(role.Id)))
        {
            chosen[role.Id] = role.Value switch
            {
                Value.Light => lightest,
                Value.Dark => darkest,
                _ when role.Id == quilt.Backing.Role => MostOf(shelf, fabrics),
                _ => fabrics[fabrics.Count / 2].Number,
            };
        }

        return new(name, chosen.ToImmutable());

        int Place(string number) => fabrics.FindIndex(f => f.Number == number);
    }

    // A backing takes more than any other part.
    private static string MostOf(Shelf shelf, List<Fabric> fabrics) =>
        fabrics.MaxBy(fabric => shelf.BoltsOf(fabric.Number).Select(bolt => bolt.OnHand).DefaultIfEmpty().Max())!.Number;

    /// <summary>The part of the sorted shelf that a value takes: a third at each end, and what lies between.</summary>
    private static List<Fabric> Share(List<Fabric> sorted, Value? value)
    {
        var third = Math.Max(1, sorted.Count / 3);
        return value switch
        {
            Value.Light => sorted[..third],
            Value.Dark => [.. sorted[^third..].AsEnumerable().Reverse()],
            _ => sorted.Count > 2 * third ? sorted[third..^third] : sorted,
        };
    }

    /// <summary>Evenly over the share, beginning at its outer end.</summary>
    private static void Spread(List<Role> roles, List<Fabric> share, ImmutableSortedDictionary<string, string>.Builder chosen)
    {
        for (var i = 0; i < roles.Count; i++)
        {
            chosen[roles[i].Id] = share[i * share.Count / roles.Count].Number;
        }
    }
}
