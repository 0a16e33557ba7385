using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Parts that meet at corners where no seam goes straight on: eight-pointed stars, hexagons, attic windows. Straight
/// seams as far as they go, and parts set into the angles that are left.
/// </summary>
internal static class SetInParts
{
    public const string Kind = "set-in";

    /// <param name="place">Puts a convex part into a register; answers its id, or null where it cannot be made.</param>
    /// <returns>Null where no way was found, or a part cannot be made.</returns>
    public static Program? Make(Region region, SetInSearch.Joint joint, Func<List<Verb>, string, Region, PathId?> place)
    {
        var verbs = new List<Verb>();
        var parts = ImmutableArray.CreateBuilder<UnitPart>();
        var registers = 0;
        if (!Put(joint, "unit"))
        {
            return null;
        }

        return new(Kind, [.. verbs], ["unit"], Message.Of("unit.set-in", ("parts", parts.Count)))
        {
            Parts = parts.ToImmutable(),
            Outline = region.IsOnRuler ? null : Hull.Of(region),
        };

        bool Put(SetInSearch.Joint which, string register)
        {
            if (which.On is null || which.Part is null)
            {
                var part = region.Part(which.Items);
                if (place(verbs, register, part) is not { } id)
                {
                    return false;
                }

                parts.Add(new(id, part.Items.Length == 1 ? part.Items[0].Shape : Hull.Of(part)));
                return true;
            }

            var next = $"part-{++registers}";
            if (!Put(which.On, register) || !Put(which.Part, next))
            {
                return false;
            }

            verbs.Add(new SewIn(register, next, which.Lines, PressToward.Top));
            return true;
        }
    }
}
