using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>
/// How pieces that are matched to a print are cut: each from a room of whole repeats, so that strip after strip and room
/// after room begins at the same place of the print. Where the first lies on the cloth is not known, so one repeat along
/// is allowed for it once, and one across in each strip. Cloth is laid flat, and the print is the guide of the edge.
/// </summary>
internal sealed class MatchedRooms(PrintMatch match, ClothTerms terms)
{
    public ClothTerms Terms { get; } =
        terms with
        {
            Straightening = terms.Straightening + (match.Along ?? Length.Zero),
            CrossTrim = terms.CrossTrim + (match.Across ?? Length.Zero),
            Table = terms.Table?.Flat,
            Match = match,
        };

    /// <summary>A piece that with its repeats fills more than a strip has one to itself.</summary>
    public Length Across(Length width) =>
        match.Across is not { } repeat ? width
        : width.RoundUpTo(repeat) is var room && room > Terms.StripLength && width <= Terms.StripLength ? Terms.StripLength
        : room;

    /// <summary>Pieces that are wider than what finding the first repeat leaves of a strip.</summary>
    public static IEnumerable<Finding> TooWide(Pieced pieced, ImmutableArray<PlanFabric> fabrics, ClothTerms terms) =>
        from fabric in fabrics
        where fabric.Match is not null
        let rooms = new MatchedRooms(fabric.Match!, terms)
        from piece in pieced.Pieces
        where fabric.Roles.Contains(piece.Role) && piece.Width > rooms.Terms.StripLength
        select Finding.Of(
            "piecing.match-wide",
            piece.Id.Value,
            ("label", piece.Label),
            ("width", piece.Width),
            ("repeat", fabric.Match!.Across ?? Length.Zero),
            ("strip", Length.Max(rooms.Terms.StripLength, Length.Zero))
        );

    public Length Along(Length height) => match.Along is { } repeat ? height.RoundUpTo(repeat) : height;
}
