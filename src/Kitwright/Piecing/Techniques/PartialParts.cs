using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Parts that whirl round a center: the first is sewn on half way, the others follow round, and the first seam is closed
/// at the end.
/// </summary>
internal static class PartialParts
{
    public const string Kind = "partial";

    /// <param name="place">Puts a convex part into a register; answers its id, or null where it cannot be made.</param>
    /// <returns>Null where a part cannot be made.</returns>
    public static Program? Make(Region region, PartialSearch.Way way, Func<List<Verb>, string, Region, PathId?> place)
    {
        var verbs = new List<Verb>();
        var parts = ImmutableArray.CreateBuilder<UnitPart>();
        if (!Put(way.Base, "unit") || !Put(way.First, "first"))
        {
            return null;
        }

        verbs.Add(new SewPart("unit", "first", way.Line, way.Stop));
        foreach (var (part, line) in way.Round)
        {
            if (!Put(part, "next"))
            {
                return null;
            }

            verbs.Add(new SewIn("unit", "next", [line], PressToward.Top));
        }

        verbs.Add(new CloseSeam("unit", PressToward.Top));
        return new(Kind, [.. verbs], ["unit"], Message.Of("unit.partial", ("parts", parts.Count)))
        {
            Parts = parts.ToImmutable(),
            Outline = region.IsOnRuler ? null : Hull.Of(region),
        };

        bool Put(ulong items, string register)
        {
            var part = region.Part(items);
            if (place(verbs, register, part) is not { } id)
            {
                return false;
            }

            parts.Add(new(id, part.Items.Length == 1 ? part.Items[0].Shape : Hull.Of(part)));
            return true;
        }
    }
}
