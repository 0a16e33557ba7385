using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>One cutting problem per letter from the cut pieces of its roles.</summary>
internal static class ClothProblems
{
    public static IEnumerable<ClothProblem> Of(Pieced pieced, ImmutableArray<PlanFabric> fabrics, PlanOptions options)
    {
        foreach (var fabric in fabrics)
        {
            ImmutableArray<ClothDemand> demand =
            [
                .. pieced
                    .Pieces.Where(p => fabric.Roles.Contains(p.Role))
                    .Select(p => new ClothDemand(p.Id, p.Label, p.Width, p.Height, p.ToCut, p.MayTurn)
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
                    options.Terms,
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
}
