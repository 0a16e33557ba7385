using System.Collections.Immutable;

namespace Kitwright.Accuracy;

/// <summary>How the size of one unit comes about, for the model: what it is joined from, and along which way.</summary>
/// <param name="Copies">How many the quilt holds.</param>
/// <param name="IsBlock">Whether it is a finished block.</param>
/// <param name="Parts">In the order of sewing; empty for a unit that a technique makes.</param>
/// <param name="Shrink">
/// For a unit of a technique, how many seams' worth of allowance lie between its piece as cut and its size, each way.
/// </param>
/// <param name="Plain">Whether the part joined last is one piece of cloth, so that the unit can be cut generous and squared up.</param>
/// <param name="Points">Seams that end at a point which the seams of this unit must not cut off.</param>
/// <param name="Trimmed">Whether the plan itself trims it.</param>
internal sealed record UnitShape(
    int Copies,
    bool IsBlock,
    ImmutableArray<PartShape> Parts,
    double ShrinkAcross,
    double ShrinkUp,
    bool Along,
    bool Plain,
    int Points,
    bool Trimmed
);

/// <summary>One part of a row.</summary>
/// <param name="Unit">Index of the unit; −1 for a piece of cloth.</param>
/// <param name="Turned">Whether the part's own width lies across the row.</param>
/// <param name="Fitted">Whether it is cut to the measure of what it is joined to, as a border is.</param>
internal readonly record struct PartShape(int Unit, bool Turned, bool Fitted);
