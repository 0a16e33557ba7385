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
    /// <param name="shop">The shop's choice of techniques, where the quilt has none.</param>
    /// <param name="prints">Roles whose prints may not lie any way round; null for none.</param>
    public static Checked<Pieced> Of(
        Quilt quilt,
        Design design,
        Letters letters,
        ClothTerms terms,
        ImmutableSortedDictionary<string, string>? shop = null,
        PrintRoles? prints = null
    )
    {
        var beyond = CutOtherwise(quilt).ToImmutableArray();
        if (beyond.Length > 0)
        {
            return Checked<Pieced>.Failed(beyond);
        }

        var choice = new TechniqueChoice(quilt.Techniques, shop ?? ImmutableSortedDictionary<string, string>.Empty);
        var upright = new UprightDesign(quilt, design, prints ?? PrintRoles.None);
        if (upright.Faults().ToImmutableArray() is { IsEmpty: false } faults)
        {
            return Checked<Pieced>.Failed(faults);
        }

        var first = Piece(quilt, design, letters, terms, choice, upright, ImmutableDictionary<string, int>.Empty);
        if (first.Piecer.Findings.Count > 0)
        {
            return Checked<Pieced>.Failed([.. first.Piecer.Findings, .. Narrow(quilt, design)]);
        }

        // Strip sets are as long as the number of rows asks for, which is known only when all is pieced once.
        var copies = CopiesOf(first);
        var made = choice.Wants("strip-set") ? Piece(quilt, design, letters, terms, choice, upright, copies) : first;
        var binding = BindingStrips.Of(quilt, design, terms, made.Book);
        made.Counts[binding.Piece] = binding.Strips;
        var pieced = Labels.Apply(made.Book, letters, made.Counts, UnitNames.Apply(made.Recipes), binding, quilt, design, terms, prints ?? PrintRoles.None);
        var kinds = first
            .Piecer.Kinds.GroupBy(k => k.Value.Name, k => copies.GetValueOrDefault(k.Key))
            .ToImmutableSortedDictionary(same => same.Key, same => same.Sum(), StringComparer.Ordinal);
        return new(pieced with { UnitKinds = kinds }, [.. choice.Unknown(), .. made.Piecer.Notes, .. upright.Notes(), .. Narrow(quilt, design)]);
    }

    private static IEnumerable<Finding> Narrow(Quilt quilt, Design design) => design.Blocks.SelectMany(block => NarrowPatches.Of(block, quilt.Seam));

    private sealed record Attempt(Piecer Piecer, PieceBook Book, ImmutableArray<Recipe> Recipes, Dictionary<PathId, int> Counts);

    private static Attempt Piece(
        Quilt quilt,
        Design design,
        Letters letters,
        ClothTerms terms,
        TechniqueChoice choice,
        UprightDesign upright,
        IReadOnlyDictionary<string, int> wanted
    )
    {
        var seams = new Seams(quilt.Seam, quilt.RulerStep);
        var book = new PieceBook(quilt.RulerStep);
        var piecer = new Piecer(book, seams, letters, terms.StripLength, choice, wanted, upright.Prints);
        foreach (var block in design.Blocks)
        {
            foreach (var turned in upright.TurnsOf(block))
            {
                piecer.Whole(
                    new([.. block.Patches.Select(patch => upright.InBlock(patch, turned))]),
                    Piecer.BlockId(block.Id, turned),
                    "block",
                    block.Id,
                    turned == 0 ? NameOf(block) : Message.Of("unit.block-turned", ("block", NameOf(block)), ("turns", turned)),
                    new(block.Patches, [], [])
                );
            }
        }

        piecer.Whole(
            new([.. design.Placements.Select(p => Tile(design, p) with { Turned = upright.TurnOf(p) }), .. design.Patches.Select(p => upright.InFrame(p))]),
            new("top"),
            "top",
            Recipe.WholeTop,
            Message.Of("unit.top"),
            new(design.Patches, design.Placements, [])
        );
        if (piecer.Findings.Count > 0)
        {
            return new(piecer, book, [], []);
        }

        var (recipes, counts) = Counts.Of(piecer.Drafts, seams);
        return new(piecer, book, recipes, counts);
    }

    private static Message NameOf(BlockDesign block) =>
        BlockDesigns.BorderOf(block.Id) is { } border
            ? Message.Of("unit.border-block", ("name", block.Name), ("border", border))
            : Message.Of("unit.block", ("name", BlockName.BeforeBlock(block.Name)));

    /// <summary>How many copies of each region the quilt takes, by the region's key.</summary>
    private static Dictionary<string, int> CopiesOf(Attempt made)
    {
        var copies = made.Recipes.ToDictionary(r => r.Id, r => r.Copies);
        return made.Piecer.Ids.ToDictionary(id => id.Key, id => copies.GetValueOrDefault(id.Value));
    }

    /// <summary>A bias border stretches, and nobody cuts one: better no plan than one that says one thing and cuts another.</summary>
    private static IEnumerable<Finding> CutOtherwise(Quilt quilt) =>
        quilt
            .Borders.Index()
            .Where(b => b.Item.Grain == StripGrain.Bias)
            .Select(b => Finding.Of("piecing.border-grain", $"/borders/{b.Index}/grain", ("border", b.Index + 1)))
            .Concat(
                quilt
                    .Blocks.Where(block => block.Patches.Any(p => !p.Arcs.IsEmpty) && IsLaid(quilt, block.Id))
                    .Select(block =>
                        Finding.Of(
                            "piecing.curved",
                            $"block/{block.Id}",
                            ("block", block.Name),
                            ("patches", block.Patches.Count(p => !p.Arcs.IsEmpty))
                        )
                    )
            );

    private static bool IsLaid(Quilt quilt, string block) => 
        quilt.Setting.Cells.Any(row => row.Any(cell => cell.Block == block))
        || quilt.Borders.Any(border => border.Units is { } units && (units.Block == block || units.Corner == block || units.Alternate == block));

    private static Item Tile(Design design, Placement placement)
    {
        var block = design.Blocks.First(b => b.Id == placement.Block);
        var outline = Polygon.Rectangle(0, 0, block.Width, block.Height).Moved(placement.Motion);
        return Item.OfBlock(placement, outline);
    }
}
