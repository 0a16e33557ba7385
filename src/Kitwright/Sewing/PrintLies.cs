using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>Which way the print of a directional fabric runs in the drawing of a step that takes pieces of it.</summary>
internal static class PrintLies
{
    public static IEnumerable<Message> Of(Recipe recipe, QuiltPlan plan)
    {
        var fabrics = plan.Fabrics.Where(fabric => fabric.Direction != PrintDirection.Any).ToArray();
        if (fabrics.Length == 0)
        {
            return [];
        }

        // A unit that was made turned is turned at the end, all of its copies alike.
        var after = recipe.Verbs.OfType<Turn>().Where(turn => turn.On == recipe.Makes[0]).Aggregate(Motion.Identity, (all, turn) => all.Then(turn.Motion));
        var lies =
            from take in recipe.Verbs.OfType<Take>()
            let role = plan.Pieces.First(piece => piece.Id == take.Piece).Role
            from fabric in fabrics
            where fabric.Roles.Contains(role)
            select (fabric.Letter, fabric.Direction, Way: Way(take.Motion.Then(after)));
        return lies
            .Distinct()
            .GroupBy(x => (x.Direction, x.Way), x => x.Letter)
            .Select(same => Message.Of(
                same.Key.Direction == PrintDirection.OneWay ? "step.print.one-way" : "step.print.two-way",
                ("count", same.Count()),
                ("letters", same.Order(StringComparer.Ordinal).Select(letter => Message.Plain(letter)).ToImmutableArray()),
                ("way", same.Key.Way)
            ));
    }

    /// <summary>Where the up of a piece points once it is moved.</summary>
    private static string Way(Motion motion) =>
        (motion.XY.Sign, motion.YY.Sign) switch
        {
            (0, 1) => "up",
            (-1, 0) => "left",
            (0, -1) => "down",
            (1, 0) => "right",
            (-1, 1) => "up-left",
            (-1, -1) => "down-left",
            (1, -1) => "down-right",
            _ => "up-right",
        };
}
