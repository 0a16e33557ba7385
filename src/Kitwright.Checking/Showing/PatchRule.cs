using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>A patch of the design must be covered by cloth of its role, to the last corner.</summary>
internal static class PatchRule
{
    public static Finding? Check(string rule, PathId place, Patch patch, View view)
    {
        Shape shape = new([.. patch.Shape.Corners]);
        if (view.Covers(shape, patch.Role))
        {
            return null;
        }

        var others = view.In(shape).Select(p => p.Piece.Role!).Where(r => r != patch.Role).ToArray();
        return Finding.Of(rule, place.Value, ("patch", patch.Id.Value), ("role", patch.Role)) with
        {
            Measured =
                others.Length > 0
                    ? Say.Names(others)
                    : Words.Message.Of("check.covered", ("area", Say.Area(view.AreaOf(shape, patch.Role)))),
            Expected =
                others.Length > 0
                    ? Say.Names([patch.Role])
                    : Words.Message.Of("check.covered", ("area", Say.Area(shape.TwiceArea))),
        };
    }
}
