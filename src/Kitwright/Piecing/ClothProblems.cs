using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>One cutting problem per letter from the cut pieces of its roles.</summary>
internal static class ClothProblems
{
    public static IEnumerable<ClothProblem> Of(Pieced pieced, ImmutableArray<PlanFabric> fabrics, PlanOptions options)
    {
        foreach (var fabric in fabrics)
        {
            var match = fabric.Match is { } print ? new MatchedRooms(print, options.Terms) : null;
            ImmutableArray<ClothDemand> demand =
            [
                .. pieced
                    .Pieces.Where(p => fabric.Roles.Contains(p.Role))
                    .Select(p => new ClothDemand(p.Id, p.Label, match?.Across(p.Width) ?? p.Width, match?.Along(p.Height) ?? p.Height, p.ToCut, p.MayTurn)
                    {
                        Lengthwise = p.Grain == CutGrain.Lengthwise,
                        HasOwnReserve = p.Grain is CutGrain.Lengthwise or CutGrain.Bias,
                    }),
            ];
            if (demand.Length > 0)
            {
                yield return new(
                    new($"cloth/{fabric.Letter}"),
                    fabric.Letter,
                    fabric.Roles,
                    fabric.Number,
                    match?.Terms ?? (fabric.PanelLength is { } panel ? InPanels(options.Terms, panel) : options.Terms),
                    demand,
                    options.SpareStrips,
                    options.Goal
                )
                {
                    Order = options.Order,
                };
            }
        }
    }

    /// <summary>The plan of a problem, with what its cloth asks for: lengths along the selvage first, or strips within panels.</summary>
    public static Checked<ClothPlan> Cut(ClothProblem problem, CutCloth cut) =>
        problem.Terms.Panel is not { } panel ? LengthwiseFirst.Cut(problem, cut)
        : PanelWay.Cut(problem, panel, way => cut(way)) is var planned && planned.Findings.Any(f => f.Weight == Weight.Fault) ? planned with { Value = null }
        : planned;

    /// <summary>Panels are cut apart on their printed lines and sold whole; each is cut for itself.</summary>
    private static ClothTerms InPanels(ClothTerms terms, Length panel) =>
        terms with
        {
            Straightening = Length.Zero,
            Increments = [panel],
            MinimumCut = panel,
            Table = terms.Table?.Flat,
            Panel = panel,
        };
}
