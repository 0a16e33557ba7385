using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>
/// Cuts what must lie along the selvage first, from lengths of its own, uses the width beside it for pieces of the same
/// cloth, and leaves the rest to the strips.
/// </summary>
/// <remarks>
/// First fit, longest first: pieces lie side by side in the first section with room. What lies beside only takes from
/// the demand of the strips, so it never makes them longer.
/// </remarks>
internal static class LengthwiseFirst
{
    public static Checked<ClothPlan> Cut(ClothProblem problem, CutCloth cut)
    {
        if (!problem.Demand.Any(d => d.HasOwnReserve && d.Count > 0))
        {
            return cut(problem);
        }

        if (problem.Demand.FirstOrDefault(d => d.Lengthwise && d.Width > problem.Terms.StripLength) is { } wide)
        {
            return Checked<ClothPlan>.Failed(
                Finding.Of("cutting.too-wide", wide.Piece.Value, ("label", wide.Label), ("width", wide.Width), ("height", wide.Height), ("strip", problem.Terms.StripLength))
            );
        }

        var left = problem.Demand.ToDictionary(d => d.Piece, d => d.Lengthwise ? 0 : d.Count);
        var sections = Sections(problem)
            .Select((cuts, i) => Section(problem, problem.Id.Child("section", i + 1), cuts, left))
            .ToImmutableArray();
        var taken = sections.Aggregate(Length.Zero, (sum, section) => sum + section.Length);
        var margin = Margin(problem);
        // Sections and margin stand before the strips like a longer straightening, so that the shop's steps come out right.
        var rest = cut(
            problem with
            {
                SpareStrips = 0,
                Terms = problem.Terms with { Straightening = problem.Terms.Straightening + taken + margin },
                Demand = [.. problem.Demand.Select(d => d with { Count = left[d.Piece] })],
            }
        );
        return new(rest.Value is { } strips ? Together(problem, strips, sections, margin) : null, rest.Findings);
    }

    /// <summary>What lies side by side in each section, widest lengths first.</summary>
    private static List<List<ClothDemand>> Sections(ClothProblem problem)
    {
        var sections = new List<List<ClothDemand>>();
        var pieces = problem
            .Demand.Where(d => d.Lengthwise)
            .OrderByDescending(d => d.Height)
            .ThenByDescending(d => d.Width)
            .SelectMany(d => Enumerable.Repeat(d, d.Count));
        foreach (var piece in pieces)
        {
            var section = sections.FirstOrDefault(s => Width(s) + piece.Width <= problem.Terms.StripLength);
            if (section is null)
            {
                sections.Add(section = []);
            }

            section.Add(piece);
        }

        return sections;
    }

    private static Length Width(IEnumerable<ClothDemand> pieces) => pieces.Aggregate(Length.Zero, (sum, p) => sum + p.Width);

    private static LengthwiseSection Section(ClothProblem problem, PathId id, List<ClothDemand> pieces, Dictionary<PathId, int> left)
    {
        var length = pieces[0].Height;
        var cuts = pieces
            .GroupBy(p => p.Piece)
            .Select((same, i) => new SubCut(id.Child("cut", i + 1), same.First().Width, same.Count(), [new(same.Key, 1, Turned: false)]));
        var room = problem.Terms.StripLength - Width(pieces);
        return new(id, length, [.. cuts], BesideSection.Fill(problem.Demand, left, id, room, length));
    }

    private static ClothPlan Together(ClothProblem problem, ClothPlan strips, ImmutableArray<LengthwiseSection> sections, Length margin)
    {
        ImmutableArray<StripCut> all =
        [
            .. sections.SelectMany(s => s.Beside.Prepend(new(s.Id, s.Length, 1, s.Cuts))),
            .. strips.Strips,
        ];
        var demand = problem.Demand.ToDictionary(d => d.Piece);
        Length HeightOf(StackedPiece piece) => piece.Turned ? demand[piece.Piece].Width : demand[piece.Piece].Height;
        var cut = strips.Cut - margin;
        return strips with
        {
            Terms = problem.Terms,
            Cut = cut,
            Demand = problem.Demand,
            Sections = sections,
            Margin = margin,
            Purchase = problem.Terms.Purchase(cut + margin),
            Figures = strips.Figures with
            {
                StripWidths = all.Select(s => s.Height).Distinct().Count(),
                Strips = all.Sum(s => s.Times),
                SubCuts = all.Sum(s => s.Times * s.SubCuts.Sum(c => c.Times)),
                Trims = all.Sum(s => s.Times * s.SubCuts.Where(c => HeightOf(c.Stack[0]) < s.Height).Sum(c => c.Times)),
                Passes = BladePasses.Of(problem.Terms, strips.Strips, all[..^strips.Strips.Length], HeightOf),
            },
        };
    }

    /// <summary>Spare strips from which any piece can be cut again that has no reserve of its own.</summary>
    private static Length Margin(ClothProblem problem) =>
        problem
            .Demand.Where(d => !d.HasOwnReserve && d.Count > 0)
            .Select(d =>
                d.MayTurn && d.Height <= problem.Terms.StripLength && (d.Width > problem.Terms.StripLength || d.Width < d.Height) ? d.Width : d.Height
            )
            .DefaultIfEmpty(Length.Zero)
            .Max() * problem.SpareStrips;
}
