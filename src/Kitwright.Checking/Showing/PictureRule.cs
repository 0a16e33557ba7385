using Kitwright.Checking.Designs;
using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>The picture that drawings use of a unit shows what the sewing makes. An empty picture claims nothing.</summary>
internal static class PictureRule
{
    public static Finding? Check(
        Recipe recipe,
        Face[] faces,
        ILookup<string, BlockDesign> blocks,
        Length seam,
        Effort effort
    )
    {
        var picture = recipe.Picture;
        var finished = UnitOutline.Finished(recipe, seam);
        if (picture.Patches.Length + picture.Tiles.Length > 0)
        {
            var view = new View(Leaves.Of(faces, finished, effort), effort);
            var bad =
                BadTile(picture, blocks, view)
                ?? picture.Patches.FirstOrDefault(p => !IsSound(p.Shape, effort) || !view.Covers(new([.. p.Shape.Corners]), p.Role))?.Id;
            if (bad is { } place)
            {
                return Finding.Of("check.sewing.picture", recipe.Id.Value, ("part", place.Value));
            }

            var edges = new EdgeSum();
            edges.Add(recipe.Id, finished, -1);
            foreach (var patch in picture.Patches)
            {
                edges.Add(patch.Id, new([.. patch.Shape.Corners]), 1);
            }

            foreach (var tile in picture.Tiles)
            {
                edges.Add(tile.Id, View.Rectangle(blocks[tile.Block].First()).Moved(tile.Motion), 1);
            }

            if (edges.FirstOpen() is { } open)
            {
                return Finding.Of("check.sewing.picture", recipe.Id.Value, ("part", open.Place.Value));
            }
        }

        return PartsOf(picture, faces, finished, effort) is { } part
            ? Finding.Of("check.sewing.picture", recipe.Id.Value, ("part", part.Value))
            : null;
    }

    private static bool IsSound(Polygon polygon, Effort effort)
    {
        effort.Spend(SimplePolygon.Steps(polygon.Corners.Length));
        return SimplePolygon.Fault(polygon.Corners.AsSpan()) is null;
    }

    private static PathId? BadTile(UnitPicture picture, ILookup<string, BlockDesign> blocks, View view) =>
        picture
            .Tiles.FirstOrDefault(t =>
                !Rigid.Keeps(t.Motion) || blocks[t.Block].FirstOrDefault() is not { } block || !view.Shows(t, block)
            )
            ?.Id;

    /// <summary>Each outline is what shows of one part in the finished unit; a part is named once.</summary>
    private static PathId? PartsOf(UnitPicture picture, Face[] faces, Shape finished, Effort effort)
    {
        if (picture.Parts.IsEmpty)
        {
            return null;
        }

        var shown = new Dictionary<Part, List<Shape>>();
        foreach (var face in faces)
        {
            effort.Spend(1);
            if (face.Shape.Within(finished) is { } shape)
            {
                shown.TryAdd(face.Part, []);
                shown[face.Part].Add(shape);
            }
        }

        var boxes = new Boxes<Part>(shown.SelectMany(p => p.Value.Select(shape => (p.Key, shape))));
        foreach (var part in picture.Parts)
        {
            if (!IsSound(part.Outline, effort))
            {
                return part.Of;
            }

            Shape outline = new([.. part.Outline.Corners]);
            var match = boxes
                .Near(outline)
                .FirstOrDefault(p => p.Of == part.Of && shown.ContainsKey(p) && Fills(shown[p], outline, effort));
            if (match is null)
            {
                return part.Of;
            }

            shown.Remove(match);
        }

        return shown.Keys.FirstOrDefault()?.Of;
    }

    private static bool Fills(List<Shape> faces, Shape outline, Effort effort)
    {
        effort.Spend(faces.Count);
        Surd all = Surd.Zero,
            inside = Surd.Zero;
        foreach (var face in faces)
        {
            if (outline.Within(face) is not { } part)
            {
                return false;
            }

            all += face.TwiceArea;
            inside += part.TwiceArea;
        }

        return all == outline.TwiceArea && inside == all;
    }
}
