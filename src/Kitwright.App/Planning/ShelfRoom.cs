using System.Collections.Immutable;
using Kitwright.Checking;
using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Piecing;
using Kitwright.Plans;

namespace Kitwright.App.Planning;

/// <summary>
/// A quilt from the leftovers on the shop's shelf: each fabric of its colorway from leftovers of that fabric, and from
/// cloth that somebody wrote down; what is missing after that is bought.
/// </summary>
public static class ShelfRoom
{
    /// <param name="written">Cloth that is there besides the shelf.</param>
    public static ShelfAnswer Plan(
        QuiltPlan quilt,
        Shelf shelf,
        ImmutableArray<StockSheet> written,
        Length trim,
        bool oneClothEach,
        PlanOptions options,
        WorkBudget budget,
        CancellationToken cancel
    )
    {
        // A leftover shows any part of its print: what is matched, or cut from panels, comes from the bolt.
        var fromShelf = quilt.Cloths.Where(cloth => cloth is { Fabric: not null, Panels: null, Terms.Match: null }).ToArray();
        var fabrics = fromShelf.Select(cloth => cloth.Fabric!).ToHashSet(StringComparer.Ordinal);
        var pieces = shelf
            .Offcuts.Where(piece => fabrics.Contains(piece.Fabric))
            .Select((piece, i) => (Id: new PathId("cloth").Child("shelf", i + 1), piece))
            .ToImmutableDictionary(pair => pair.Id, pair => pair.piece);
        var sheets = pieces
            .Select(pair => new StockSheet(pair.Key, shelf.NameOf(pair.Value.Fabric), pair.Value.Width, pair.Value.Height, pair.Value.Count, pair.Value.Width.InInches * pair.Value.Height.InInches))
            .OrderBy(sheet => sheet.Id.Value.Length)
            .ThenBy(sheet => sheet.Id.Value, StringComparer.Ordinal)
            .ToImmutableArray();
        var choice = StashRoom.Choice(quilt, written);
        choice = quilt.Cloths.ToImmutableDictionary(
            cloth => cloth.Letter,
            cloth => choice[cloth.Letter].AddRange(sheets.Where(sheet => fromShelf.Contains(cloth) && pieces[sheet.Id].Fabric == cloth.Fabric))
        );
        var answer = StashRoom.Plan(quilt, written.AddRange(sheets), choice, trim, oneClothEach, budget, cancel);
        if (quilt.Cloths.All(cloth => cloth.Fabric is null) && !shelf.Offcuts.IsEmpty)
        {
            answer = answer with { Findings = answer.Findings.Insert(0, Finding.Of("stash.no-colorway", "quilt")) };
        }

        return new(answer, pieces, [.. quilt.Cloths.Select(cloth => Rest(cloth, answer, options, cancel))]);
    }

    /// <summary>What of a cloth has to be bought for the pieces that the leftovers do not give.</summary>
    private static RestToBuy Rest(ClothPlan cloth, StashAnswer answer, PlanOptions options, CancellationToken cancel)
    {
        var planned = answer.Plan?.Problem.Demand.Select(d => d.Piece).ToHashSet() ?? [];
        var missing = answer.Plan?.Short.ToDictionary(s => s.Piece, s => s.Count) ?? [];
        var (rest, wanted) = (ImmutableArray.CreateBuilder<ClothDemand>(), cloth.Demand.Sum(d => (long)d.Count));
        foreach (var demand in cloth.Demand)
        {
            var count = planned.Contains(demand.Piece) ? Math.Min(missing.GetValueOrDefault(demand.Piece), demand.Count) : demand.Count;
            if (planned.Contains(demand.Piece))
            {
                missing[demand.Piece] = missing.GetValueOrDefault(demand.Piece) - count;
            }

            if (count > 0)
            {
                rest.Add(demand with { Count = count });
            }
        }

        var missed = rest.Sum(d => (long)d.Count);
        if (missed == wanted)
        {
            return new(cloth, wanted, 0, cloth.Purchase);
        }

        if (missed == 0)
        {
            return new(cloth, wanted, wanted, Length.Zero);
        }

        var problem = new ClothProblem(cloth.Id, cloth.Letter, cloth.Roles, cloth.Fabric, cloth.Terms, rest.ToImmutable(), options.SpareStrips, options.Goal) { Order = options.Order };
        var bought = Cutters.Named(options.Budget, cancel)(problem);
        // What is not cut whole, or does not hold against the checker, is not said: the whole length is enough in any case.
        var purchase = bought is { Value: { } plan, Findings.IsEmpty: true } && ClothChecker.Check(plan).IsEmpty ? Length.Min(plan.Purchase, cloth.Purchase) : cloth.Purchase;
        return new(cloth, wanted, wanted - missed, purchase);
    }
}

/// <summary>What comes from the shelf, and what is to be bought.</summary>
/// <param name="Pieces">The leftovers that may be cut, by the ids of their sheets; written cloth is not among them.</param>
public sealed record ShelfAnswer(StashAnswer Stash, ImmutableDictionary<PathId, Offcut> Pieces, ImmutableArray<RestToBuy> Rest)
{
    /// <summary>The leftovers that the plan touches, with how many of each.</summary>
    public ImmutableArray<Offcut> Touched =>
        Stash.Plan is not { } plan
            ? []
            :
            [
                .. plan
                    .Cuts.Where(cut => Pieces.ContainsKey(cut.Sheet))
                    .GroupBy(cut => cut.Sheet)
                    .Select(same => Pieces[same.Key] with { Count = same.Sum(cut => cut.Times) }),
            ];

    /// <summary>What is worth keeping of them when they are cut.</summary>
    public ImmutableArray<Offcut> Left(Length least) =>
        Stash.Plan is not { } plan ? [] : Shelving.Of(plan with { Cuts = [.. plan.Cuts.Where(cut => Pieces.ContainsKey(cut.Sheet))] }, id => Pieces[id].Fabric, least);
}

/// <summary>What is to be bought of one fabric.</summary>
/// <param name="Wanted">Pieces that the quilt takes of it.</param>
/// <param name="FromShelf">Pieces of them that come from cloth that is there.</param>
/// <param name="Purchase">Zero where nothing is to be bought.</param>
public sealed record RestToBuy(ClothPlan Cloth, long Wanted, long FromShelf, Length Purchase);
