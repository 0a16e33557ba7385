using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>What the shelf gives to a request: which bolt gives which cut, what is short, and what to order.</summary>
/// <param name="Lines">One per colorway, in the order of the request.</param>
/// <param name="CompleteAtMost">No dealing of these bolts fills more of the wanted kits, over all colorways.</param>
/// <param name="Fabrics">One per fabric that the request names, by number.</param>
/// <param name="Order">What would make the wanted kits whole; empty where nothing is short.</param>
public sealed record KitPlan(
    KitTerms Terms,
    ImmutableArray<LineOutcome> Lines,
    int CompleteAtMost,
    ImmutableArray<FabricOutcome> Fabrics,
    ImmutableArray<OrderLine> Order
)
{
    public const string Format = "kitwright-kits";
    public const int Version = 1;

    /// <summary>Wanted kits that come out whole, over all colorways.</summary>
    public int Complete => Lines.Sum(l => l.Complete);
}

/// <summary>One colorway of the request.</summary>
/// <param name="Complete">Wanted kits that get every cut beside the other colorways of the request: kits 1 to this.</param>
/// <param name="Carries">Kits that the bolts carry if they are cut for this colorway alone.</param>
/// <param name="CarriesAtMost">No way of cutting gives more; equal to <paramref name="Carries"/> where that is proved.</param>
/// <param name="Fabrics">How many each fabric carries alone, in the order of the letters.</param>
/// <param name="Limit">What keeps <paramref name="Carries"/> from being more.</param>
public sealed record LineOutcome(
    string Colorway,
    string? PlanMark,
    int Wanted,
    int Complete,
    int Carries,
    int CarriesAtMost,
    ImmutableArray<FabricCarry> Fabrics,
    KitLimit Limit
);

/// <summary>How many kits of one colorway one fabric carries.</summary>
/// <param name="Name">The fabric's name; its number where the shelf does not know it.</param>
/// <param name="Letters">The letters that it fills.</param>
/// <param name="PerKit">What one kit takes of it.</param>
/// <param name="AtMost">No way of cutting its bolts gives more.</param>
public sealed record FabricCarry(
    string Fabric,
    string Name,
    ImmutableArray<string> Letters,
    Length PerKit,
    int Kits,
    int AtMost
);

/// <summary>The fabrics that run out first, and what one more bolt of each would bring.</summary>
/// <param name="Fabrics">One, or several that run out together.</param>
/// <param name="Brings">How many kits more the colorway would come to.</param>
public sealed record KitLimit(ImmutableArray<LimitingFabric> Fabrics, int Brings);

/// <param name="PutUp">The length of the bolt that is thought of.</param>
public sealed record LimitingFabric(string Fabric, string Name, ImmutableArray<string> Letters, Length PutUp);

/// <summary>One fabric's bolts under the request.</summary>
/// <param name="OnHand">All bolts together.</param>
/// <param name="Loads">Bolts put on the table, each once.</param>
/// <param name="Short">Cuts that no bolt gives.</param>
public sealed record FabricOutcome(
    string Fabric,
    string Name,
    Length OnHand,
    ImmutableArray<BoltLoad> Loads,
    ImmutableArray<ShortCut> Short,
    AllocationFigures Figures,
    ImmutableArray<GoalBound> Goals,
    string Method,
    double Work,
    string StoppedBy
)
{
    /// <summary>Missing cloth, cut by cut; what loading takes from new bolts comes on top.</summary>
    public Length ShortLength => Short.Aggregate(Length.Zero, (sum, cut) => sum + (cut.Length * cut.Kits));
}

/// <summary>One bolt on the table.</summary>
/// <param name="Id"><c>load/BOLT</c>.</param>
/// <param name="OnHand">Before.</param>
/// <param name="Loss">What squaring takes.</param>
/// <param name="Remnant">After.</param>
public sealed record BoltLoad(
    PathId Id,
    string Bolt,
    string Lot,
    Length OnHand,
    Length Loss,
    ImmutableArray<LoadCut> Cuts,
    Length Remnant
);

/// <summary>One length for one kit.</summary>
/// <param name="Id"><c>kit/COLORWAY/3/need/1</c>: the first need of the third kit.</param>
/// <param name="Need">Its place among the needs of the colorway, from 0.</param>
public sealed record LoadCut(
    PathId Id,
    string Colorway,
    int Kit,
    int Need,
    string Letter,
    NeedKind Kind,
    Length Length
);

/// <summary>A length that is missing for the kits from <paramref name="FirstKit"/> on.</summary>
/// <param name="Need">Its place among the needs of the colorway, from 0.</param>
public sealed record ShortCut(
    string Colorway,
    int FirstKit,
    int Kits,
    int Need,
    string Letter,
    NeedKind Kind,
    Length Length
);

/// <summary>What to order of one fabric, as one lot.</summary>
/// <param name="Bolts">Whole bolts.</param>
/// <param name="BoltsAtLeast">Fewer do not do; equal to <paramref name="Bolts"/> where that is proved.</param>
/// <param name="PutUp">Length of each.</param>
/// <param name="Short">The cuts themselves.</param>
/// <param name="LeftOver">What remains of the new bolts, loads taken off.</param>
public sealed record OrderLine(
    string Fabric,
    string Name,
    int Bolts,
    int BoltsAtLeast,
    Length PutUp,
    Length Short,
    Length LeftOver
)
{
    public Length Length => PutUp * Bolts;
}
