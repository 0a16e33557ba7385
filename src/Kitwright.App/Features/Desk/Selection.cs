using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Cutting.Instructions;
using Kitwright.Plans;

namespace Kitwright.App.Features.Desk;

/// <summary>What is touched, and all that hangs on it by the trace of the checked plan.</summary>
/// <param name="Item">The path of a block's place, patch, piece, strip, sub-cut, cloth or recipe; empty for none.</param>
/// <param name="Place">The block of the quilt in which a patch was touched; empty elsewhere.</param>
public sealed record Selection(
    PathId Item,
    PathId Place,
    ImmutableHashSet<PathId> Patches,
    ImmutableHashSet<PathId> Pieces,
    ImmutableHashSet<PathId> Cuts,
    ImmutableHashSet<PathId> Recipes
)
{
    public static Selection None { get; } = new(default, default, [], [], [], []);

    public bool IsNone => Item.Value.Length == 0;

    /// <summary>The place of the block that is touched as a whole; null where something else is touched.</summary>
    public PathId? Block => !IsNone && Item == Place ? Place : null;

    /// <summary>Nothing where the plan has no such item, as after a change of the quilt.</summary>
    /// <param name="at">An item's path; a patch within a block follows the path of the block's place.</param>
    public static Selection Of(PathId at, Planned planned)
    {
        if (at.Value.Length == 0 || planned.Plan is not { } plan)
        {
            return None;
        }

        var (place, item) = Split(at);
        var links = planned.Trace.Links;
        var recipes = item.Value.Length == 0 ? [] : RecipesUnder(item, plan);
        var pieces = links
            .Where(link => link.Patch == item || recipes.Contains(link.Recipe))
            .Select(link => link.Piece)
            .Concat(PiecesOf(item, plan))
            .Concat(BlockPieces(place, item, planned))
            .ToImmutableHashSet();
        if (pieces.IsEmpty)
        {
            return None;
        }

        var touched = links.Where(link => pieces.Contains(link.Piece)).ToImmutableArray();
        return new(
            item.Value.Length == 0 ? place : item,
            place,
            [.. touched.Select(link => link.Patch)],
            pieces,
            [.. plan.Cloths.SelectMany(cloth => CutsOf(cloth, pieces))],
            recipes.IsEmpty ? [.. touched.Select(link => link.Recipe)] : recipes
        );
    }

    private static (PathId Place, PathId Item) Split(PathId at)
    {
        if (!at.Value.StartsWith("place/", StringComparison.Ordinal))
        {
            return (default, at);
        }

        var block = at.Value.IndexOf("/block/", StringComparison.Ordinal);
        return block < 0 ? (at, default) : (new(at.Value[..block]), new(at.Value[(block + 1)..]));
    }

    private static IEnumerable<PathId> PiecesOf(PathId item, QuiltPlan plan) =>
        plan
            .Pieces.Where(piece => piece.Id == item)
            .Select(piece => piece.Id)
            .Concat(plan.Cloths.Where(cloth => cloth.Id == item).SelectMany(cloth => cloth.Demand.Select(d => d.Piece)))
            .Concat(
                from cloth in plan.Cloths
                from strip in CutInstructions.Lines(cloth).Select(line => line.Strip).OfType<StripCut>()
                from cut in strip.SubCuts
                where strip.Id == item || cut.Id == item
                from stacked in cut.Stack
                select stacked.Piece
            );

    // A block that is touched as a whole stands for all of its patches.
    private static IEnumerable<PathId> BlockPieces(PathId place, PathId item, Planned planned)
    {
        if (place.Value.Length == 0 || item.Value.Length > 0)
        {
            return [];
        }

        var design = planned.Plan!.Design;
        var kind = design.Placements.FirstOrDefault(p => p.Id == place)?.Block;
        var patches = design.Blocks.Where(b => b.Id == kind).SelectMany(b => b.Patches).Select(p => p.Id).ToHashSet();
        return planned.Trace.Links.Where(link => patches.Contains(link.Patch)).Select(link => link.Piece);
    }

    /// <summary>The recipe and those whose units it uses, right down to the pieces.</summary>
    private static ImmutableHashSet<PathId> RecipesUnder(PathId item, QuiltPlan plan)
    {
        var recipes = plan.Sewing.Recipes.ToDictionary(recipe => recipe.Id);
        var found = ImmutableHashSet.CreateBuilder<PathId>();
        var open = new Stack<PathId>([item]);
        while (open.TryPop(out var next))
        {
            if (recipes.TryGetValue(next, out var recipe) && found.Add(next))
            {
                foreach (var use in recipe.Verbs.OfType<Use>())
                {
                    open.Push(use.Unit);
                }
            }
        }

        return found.ToImmutable();
    }

    private static IEnumerable<PathId> CutsOf(ClothPlan cloth, ImmutableHashSet<PathId> pieces) =>
        from strip in CutInstructions.Lines(cloth).Select(line => line.Strip).OfType<StripCut>()
        from cut in strip.SubCuts
        where cut.Stack.Any(stacked => pieces.Contains(stacked.Piece))
        from id in (PathId[])[cloth.Id, strip.Id, cut.Id]
        select id;
}
