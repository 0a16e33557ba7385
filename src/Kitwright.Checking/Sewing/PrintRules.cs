using Kitwright.Checking.Exact;
using Kitwright.Checking.Showing;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// Prints that have an up, in the top as it is sewn: where each patch of such a fabric shows, the cloth's length runs up
/// the quilt (two-way: up or down), or up the block where the plan says that prints go with it. On point, blocks and what
/// lies between them stand on their corner, an eighth of a turn from upright, and their prints with them.
/// </summary>
/// <remarks>
/// A cut piece is known with its height along the cloth. That it is cut so, and never turned, is asked of the cut list here,
/// and of the strips by <see cref="Cloths.StripRules"/>.
/// </remarks>
internal static class PrintRules
{
    private static readonly Surd HalfRoot = Surd.OfRoot2(new(1, 2));
    private static readonly Point Up = new(0, 1);
    private static readonly Point UpOnPoint = new(-HalfRoot, HalfRoot);

    public static void Check(QuiltPlan plan, IReadOnlyDictionary<PathId, Unit?> units, FindingList findings, Effort effort)
    {
        var directions = plan
            .Fabrics.Where(fabric => fabric.Direction != PrintDirection.Any)
            .SelectMany(fabric => fabric.Roles.Select(role => (Role: role, fabric.Direction)))
            .DistinctBy(pair => pair.Role)
            .ToDictionary(pair => pair.Role, pair => pair.Direction, StringComparer.Ordinal);
        if (directions.Count == 0)
        {
            return;
        }

        // A square of a bias binding has no up.
        foreach (var piece in plan.Pieces.Where(p => p.MayTurn && p.Grain != CutGrain.Bias && directions.ContainsKey(p.Role)))
        {
            findings.Add("check.print.may-turn", piece.Id.Value, ("label", piece.Label));
        }

        if (plan.Sewing.Recipes.LastOrDefault(r => r.Shows == Recipe.WholeTop) is { } top && units.GetValueOrDefault(top.Id) is { } sewn)
        {
            var view = new View(Leaves.Of(sewn.Faces, UnitOutline.Finished(top, plan.Seam), effort), effort);
            Look(plan, view, directions, findings);
        }
    }

    private static void Look(QuiltPlan plan, View view, Dictionary<string, PrintDirection> directions, FindingList findings)
    {
        var blocks = plan.Design.Blocks.ToLookup(b => b.Id, StringComparer.Ordinal);
        var onPoint = plan.Design.Placements.Any(placement => StandsOnPoint(placement.Motion));
        foreach (var placement in plan.Design.Placements)
        {
            var up =
                plan.Prints == PrintSetting.WithTheBlock ? new(placement.Motion.XY, placement.Motion.YY)
                : StandsOnPoint(placement.Motion) ? UpOnPoint
                : Up;
            Shape place = View.Rectangle(blocks[placement.Block].First()).Moved(placement.Motion);
            Held(place, up, placement.Id);
        }

        foreach (var patch in plan.Design.Patches.Where(patch => directions.ContainsKey(patch.Role)))
        {
            Held(new([.. patch.Shape.Corners]), onPoint && patch.Id.Value.Split('/') is [_, "sash" or "post", ..] ? UpOnPoint : Up, patch.Id);
        }

        void Held(Shape shape, Point up, PathId place)
        {
            foreach (var (leaf, _) in view.In(shape))
            {
                var piece = leaf.Piece!.Piece;
                var runs = new Point(leaf.Frame.XY, leaf.Frame.YY);
                if (directions.TryGetValue(piece.Role, out var direction) && runs != up && !(direction == PrintDirection.TwoWay && runs == up * -1))
                {
                    findings.Add("check.print.turned", place.Value, ("label", piece.Label));
                }
            }
        }
    }

    private static bool StandsOnPoint(Motion motion) => !motion.XX.IsZero && !motion.XY.IsZero;
}
