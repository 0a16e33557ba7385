using System.Collections.Immutable;
using Kitwright.App.Planning;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.App.Commands;

/// <summary>What of a quilt comes from the leftovers on the shelf.</summary>
/// <param name="Used">Leftovers that the plan cuts: what is booked as used once it is cut.</param>
/// <param name="Left">What is worth keeping of them.</param>
/// <param name="Buy">Fabric by fabric, what is to be bought for the rest.</param>
internal sealed record ShelfOutcome(ImmutableArray<Offcut> Used, ImmutableArray<Offcut> Left, ImmutableArray<BuyOutcome> Buy)
{
    public static ShelfOutcome Of(ShelfAnswer answer, Length least) =>
        new(
            answer.Touched,
            answer.Left(least),
            [.. answer.Rest.Select(rest => new BuyOutcome(rest.Cloth.Id, rest.Cloth.Fabric, rest.Wanted, rest.FromShelf, rest.Purchase))]
        );
}

/// <param name="Pieces">That the quilt takes of the cloth.</param>
/// <param name="There">Of these, from cloth that is there.</param>
/// <param name="Purchase">What to buy for the others; zero for nothing.</param>
internal sealed record BuyOutcome(PathId Cloth, string? Fabric, long Pieces, long There, Length Purchase);
