using Kitwright.Geometry;
using Kitwright.Piecing.Techniques;

namespace Kitwright.Piecing;

/// <summary>Recognizes the kinds of units that can be made in several ways, and makes them in the way chosen.</summary>
internal static class KnownUnits
{
    /// <summary>The kind of a region in this pose, and what makes it; a way that joins it from its patches makes nothing.</summary>
    public static (UnitKind Kind, Func<string, Making, Program?> Make)? In(Region region)
    {
        if (HalfSquareTwoAtATime.Fits(region, out var upper, out var lower))
        {
            return (TechniqueBook.HalfSquare, (technique, m) => HalfSquare(technique, m, region.Width, upper, lower));
        }

        if (HourglassTwoAtATime.Fits(region, out var upright, out var level))
        {
            return (TechniqueBook.Hourglass, (technique, m) => technique == "triangles" ? null : HourglassTwoAtATime.Make(m.Book, m.Seams, m.Letters, region.Width, upright, level, technique == "two-trimmed"));
        }

        if (StitchAndFlip.Fits(region, out var body, out var corners))
        {
            Program Flip(string technique, Making m) => StitchAndFlip.Make(m.Book, m.Seams, m.Letters, region, body, corners, technique == "flip-trimmed");
            if (StitchAndFlip.IsGoose(region, corners))
            {
                return (
                    TechniqueBook.Goose,
                    (technique, m) =>
                        technique == "triangles" ? null
                        : technique is "four" or "four-trimmed" && corners[0].Role == corners[1].Role ? GeeseFourAtATime.Make(m, region, body, corners, technique == "four-trimmed")
                        : Flip(technique, m)
                );
            }

            if (StitchAndFlip.IsSquareInSquare(region, corners))
            {
                return (TechniqueBook.SquareInSquare, (technique, m) => technique is "flip" or "flip-trimmed" ? Flip(technique, m) : null);
            }
        }

        return StripSet.Fits(region) ? (TechniqueBook.Row, (technique, m) => technique == "strip-set" ? StripSet.Make(m, region) : null) : null;
    }

    private static Program? HalfSquare(string technique, Making m, Surd finished, string upper, string lower) =>
        technique switch
        {
            "triangles" => null,
            "one" or "one-trimmed" => HalfSquareOneAtATime.Make(m, finished, upper, lower, technique == "one-trimmed"),
            "eight" or "eight-trimmed" => HalfSquareEightAtATime.Make(m, finished, upper, lower, technique == "eight-trimmed"),
            _ => HalfSquareTwoAtATime.Make(m.Book, m.Seams, m.Letters, finished, upper, lower, technique == "two-trimmed"),
        };
}
