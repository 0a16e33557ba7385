using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>Which bolt gives which cuts, by kind of cut, and how good that is known to be.</summary>
/// <param name="Uses">One entry per opened bolt, in the order of the problem's bolts.</param>
/// <param name="Figures">Recomputed from the uses.</param>
/// <param name="Goals">In the order in which they count; each bound holds where the goals before it stay as they are.</param>
/// <param name="Method">Name of the method that found it.</param>
/// <param name="Work">Deterministic work done, in the solver's units; 0 where none was asked.</param>
/// <param name="StoppedBy">What ended the search: <c>done</c>, <c>work-limit</c>, <c>clock</c>, <c>cancel</c>, <c>fault</c>.</param>
public sealed record BoltAllocation(
    ImmutableArray<BoltUse> Uses,
    AllocationFigures Figures,
    ImmutableArray<GoalBound> Goals,
    string Method,
    double Work,
    string StoppedBy
)
{
    public bool Proved => Goals.All(g => g.Proved);
}

/// <param name="Bolt">Its place in the problem.</param>
public sealed record BoltUse(int Bolt, ImmutableArray<UseCut> Cuts);

/// <summary>How often one kind of cut is made; all three are places in the problem.</summary>
public readonly record struct UseCut(int Kit, int Set, int Cut, int Times);

/// <summary>What an allocation makes least, or most, in this order.</summary>
public enum AllocationGoal
{
    /// <summary>Cuts of wanted kits that no bolt gives; least.</summary>
    Unmet,

    /// <summary>Inches lost to loading and to remnants too short to keep; least.</summary>
    Waste,

    /// <summary>Bolts put on the table; least.</summary>
    Opened,

    /// <summary>Inches of the longest remnant kept; most.</summary>
    Kept,
}

/// <summary>What a goal came to, and what no allocation can better.</summary>
/// <param name="Value">A count, or inches.</param>
/// <param name="Bound">Equal to the value where the goal is proved best.</param>
public sealed record GoalBound(AllocationGoal Goal, Rational Value, Rational Bound)
{
    public bool Proved => Value == Bound;
}
