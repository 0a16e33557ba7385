using System.Collections.Immutable;
using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>Which pieces show in which patches, found from the sewing alone.</summary>
internal static class Tracing
{
    public static IEnumerable<TraceLink> Of(
        IEnumerable<Patch> patches,
        Recipe recipe,
        Face[] faces,
        Length seam,
        Effort effort
    )
    {
        var view = new View(Leaves.Of(faces, UnitOutline.Finished(recipe, seam), effort), effort);
        foreach (var patch in patches)
        {
            var links = view.In(new([.. patch.Shape.Corners]))
                .Select(p => (Piece: p.Piece.Piece!.Of, p.Piece.Piece.Recipe))
                .Distinct();
            foreach (var (piece, from) in links)
            {
                yield return new(patch.Id, piece, from);
            }
        }
    }
}
