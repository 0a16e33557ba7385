using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>How many kits of each colorway are wanted from the shelf.</summary>
public sealed record KitRequest(ImmutableArray<KitLine> Lines);

/// <summary>One colorway of the request.</summary>
/// <param name="Colorway">Its name; unique in the request.</param>
/// <param name="PlanMark">The mark of the plan that the needs come from; null where they were typed in.</param>
/// <param name="Needs">What one kit holds, kit margin included; every length names its fabric.</param>
/// <param name="Kits">How many are wanted; 0 asks only how many the bolts carry.</param>
public sealed record KitLine(string Colorway, string? PlanMark, Needs Needs, int Kits);

/// <summary>What the kit room assumes.</summary>
/// <param name="LoadLoss">What squaring takes each time a bolt is put on the table.</param>
/// <param name="UsefulRemnant">An end of a bolt at least this long is kept; a shorter one is waste.</param>
/// <param name="PutUp">The length of a new bolt, where its fabric does not say.</param>
public sealed record KitTerms(Length LoadLoss, Length UsefulRemnant, Length PutUp)
{
    /// <summary>
    /// 1 in a load and a quarter yard worth keeping (common practice, no source); a put-up of 15 yd, the average that
    /// a shop owner names ([CSQ]), where the fabric has none of its own.
    /// </summary>
    public static KitTerms Usual { get; } = new(Length.Inch, Length.Inches(9), Length.Yards(15));

    /// <summary>The length of a new bolt of a fabric.</summary>
    public Length PutUpOf(Shelf shelf, string fabric) => shelf.Fabric(fabric)?.PutUp ?? PutUp;
}
