using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>From the quilt as designed to its cut pieces and sewing plan.</summary>
public static class PiecingPlan
{
    public static Checked<Pieced> Of(Quilt quilt, Design design, Letters letters, ClothTerms terms)
    {
        var beyond = CutOtherwise(quilt).ToImmutableArray();
        if (beyond.Length > 0)
        {
            return Checked<Pieced>.Failed(beyond);
        }

        var seams = new Seams(quilt.Seam, quilt.RulerStep);
        var book = new PieceBook(quilt.RulerStep);
        var piecer = new Piecer(book, seams, letters, terms.StripLength);
        foreach (var block in design.Blocks)
        {
            piecer.Whole(
                new([.. block.Patches.Select(Item.OfPatch)]),
                new($"block/{block.Id}"),
                "block",
                block.Id,
                Message.Of("unit.block", ("name", block.Name)),
                new(block.Patches, [], [])
            );
        }

        piecer.Whole(
            new([.. design.Placements.Select(p => Tile(design, p)), .. design.Patches.Select(p => Item.OfFrame(p, quilt.Borders))]),
            new("top"),
            "top",
            Recipe.WholeTop,
            Message.Of("unit.top"),
            new(design.Patches, design.Placements, [])
        );
        if (piecer.Findings.Count > 0)
        {
            return Checked<Pieced>.Failed([.. piecer.Findings]);
        }

        var binding = BindingStrips.Of(quilt, design, terms, book);
        var (recipes, counts) = Counts.Of(piecer.Drafts, seams);
        counts[binding.Piece] = binding.Strips;
        return Checked<Pieced>.Of(Labels.Apply(book, letters, counts, recipes, binding, quilt, design, terms));
    }

    /// <summary>A bias border stretches, and nobody cuts one: better no plan than one that says one thing and cuts another.</summary>
    private static IEnumerable<Finding> CutOtherwise(Quilt quilt) =>
        quilt.Borders.Index().Where(b => b.Item.Grain == StripGrain.Bias).Select(b => Finding.Of("piecing.border-grain", $"/borders/{b.Index}/grain", ("border", b.Index + 1)));

    private static Item Tile(Design design, Placement placement)
    {
        var block = design.Blocks.First(b => b.Id == placement.Block);
        var outline = Polygon.Rectangle(0, 0, block.Width, block.Height).Moved(placement.Motion);
        return new(outline, null, block.Id, placement.Motion);
    }
}
