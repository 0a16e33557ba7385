using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>
/// The bolts of one fabric, and what kits want from them: cutting stock in one dimension with several stock lengths.
/// </summary>
/// <param name="Fabric">Stock number.</param>
/// <param name="Bolts">Ids unique; lengths are whole ticks.</param>
/// <param name="Kits">What one kit of each colorway wants from this fabric.</param>
/// <param name="LoadLoss">Taken from each bolt that is cut at all: it is put on the table once.</param>
/// <param name="UsefulRemnant">The rest of a cut bolt is waste where it is shorter.</param>
/// <param name="Aim">How far the search goes.</param>
public sealed record BoltProblem(
    string Fabric,
    ImmutableArray<Bolt> Bolts,
    ImmutableArray<KitCuts> Kits,
    Length LoadLoss,
    Length UsefulRemnant,
    AllocationAim Aim
);

/// <summary>How far an allocation is made good.</summary>
public enum AllocationAim
{
    /// <summary>Fewest cuts unmet; nothing beyond.</summary>
    Count,

    /// <summary>Then least waste, fewest bolts opened, and the largest remnant.</summary>
    Whole,
}

/// <summary>The cuts of one fabric for one kit of one colorway: a kit gets all of them or none.</summary>
/// <param name="Kits">How many such kits are wanted.</param>
/// <param name="Sets">Cuts that must come from one lot stand in one set.</param>
public sealed record KitCuts(string Colorway, int Kits, ImmutableArray<LotSet> Sets)
{
    /// <summary>So many of them are served before anything else: other fabrics of these kits are cut as well.</summary>
    public int Promised { get; init; }

    public int CutsPerKit => Sets.Sum(s => s.Cuts.Length);

    public Length LengthPerKit => Sets.SelectMany(s => s.Cuts).Aggregate(Length.Zero, (sum, cut) => sum + cut.Length);
}

/// <summary>Cuts of one kit that must come from one lot, though perhaps from several bolts of it.</summary>
public sealed record LotSet(ImmutableArray<KitCut> Cuts);

/// <summary>One length, cut whole from one bolt.</summary>
/// <param name="Need">Its place among the needs of the colorway, from 0.</param>
/// <param name="Length">Whole ticks, above zero.</param>
public sealed record KitCut(int Need, string Letter, NeedKind Kind, Length Length);
