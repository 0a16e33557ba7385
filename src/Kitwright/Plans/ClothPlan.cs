using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>How one length of one fabric is cut: strips across the width, then sub-cuts, then trims.</summary>
/// <param name="Id"><c>cloth/A</c>.</param>
/// <param name="Letter">The fabric's letter on screen and paper.</param>
/// <param name="Roles">The roles cut from this length.</param>
/// <param name="Fabric">The stock number of the fabric, or null where the quilt is planned without a colorway.</param>
/// <param name="Terms">What the plan assumes about cloth and table.</param>
/// <param name="Demand">The pieces to be cut, by class.</param>
/// <param name="Strips">First cuts in the order of the table; ids <c>cloth/A/strip/1</c> …</param>
/// <param name="Cut">
/// Straightening, all sections and strip heights, and squaring again between them: the length that the cutting itself
/// takes.
/// </param>
/// <param name="Margin">
/// What the kit adds on top for a mis-cut: whole strips, one by default, from which any one of the pieces can be cut.
/// </param>
/// <param name="Purchase">The least saleable length that holds cutting and margin.</param>
/// <param name="Proof">What is proved about <paramref name="Cut"/>.</param>
/// <param name="Figures">Counts that a person cares for; recomputed by the checker.</param>
public sealed record ClothPlan(
    PathId Id,
    string Letter,
    ImmutableArray<string> Roles,
    string? Fabric,
    ClothTerms Terms,
    ImmutableArray<ClothDemand> Demand,
    ImmutableArray<StripCut> Strips,
    Length Cut,
    Length Margin,
    Length Purchase,
    Proof Proof,
    ClothFigures Figures
)
{
    /// <summary>
    /// Cut before all strips: lengths that are divided along the selvage. What <see cref="Proof"/> says holds for the
    /// strips that follow, with the pieces that the sections leave to them.
    /// </summary>
    public ImmutableArray<LengthwiseSection> Sections { get; init; } = [];

    /// <summary>Which strips come from which printed panels; null where the cloth is not printed in panels.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<PanelCut>? Panels { get; init; }

    /// <summary>True where even the bound, with the same margin, would need the same saleable length.</summary>
    public bool PurchaseIsLeast => Terms.Purchase(Terms.Straightening + LeastCut + Margin) == Purchase;

    /// <summary>
    /// No way of cutting takes less than this: by the proof where all is cut in strips; with sections no less than the
    /// area of the pieces over the width, and than the longest section.
    /// </summary>
    private Length LeastCut =>
        Sections.IsEmpty
            ? Proof.Bound + Terms.SquaringAgain(FewestStrips)
            : Length.Max(
                Sections.Max(section => section.Length),
                Length.Inches(
                    Demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width.InInches * d.Height.InInches * d.Count))
                        / Terms.StripLength.InInches
                )
            );

    /// <summary>No fewer strips hold the pieces, however narrow they lie.</summary>
    private long FewestStrips =>
        (long)
            (
                Demand.Aggregate(Rational.Zero, (sum, d) => sum + ((d.MayTurn ? Length.Min(d.Width, d.Height) : d.Width).InInches * d.Count))
                / Terms.StripLength.InInches
            ).Ceiling();

    /// <summary>What squaring the edge again between the strips takes, in all.</summary>
    public Length SquaringAgain => Terms.SquaringAgain(Strips.Sum(strip => (long)strip.Times));
}

/// <summary>
/// A length of cloth, cut right across, that is then divided along the selvage: border strips side by side, and beside
/// them what is left of the width, cut into ordinary shorter strips.
/// </summary>
/// <param name="Id"><c>cloth/A/section/1</c>.</param>
/// <param name="Length">Along the cloth; the longest of its pieces.</param>
/// <param name="Cuts">From the squared selvage edge; each holds one piece, unturned.</param>
/// <param name="Beside">Strips across the rest of the width, from one end of the section.</param>
public sealed record LengthwiseSection(PathId Id, Length Length, ImmutableArray<SubCut> Cuts, ImmutableArray<StripCut> Beside);

/// <summary>What a cutting plan assumes. Every allowance is a field; none is hidden in another.</summary>
/// <param name="UsableWidth">Width of fabric less selvages (EN 1773 / ISO 22198 "usable width").</param>
/// <param name="CrossTrim">Taken from each strip's length to square its end; 0 where the width allows for it already.</param>
/// <param name="Straightening">Taken from the length once, to square the first edge.</param>
/// <param name="Stages">2: strips, sub-cuts, each trimmed to one piece. 3: a sub-cut may hold a stack of pieces.</param>
/// <param name="Increments">The steps in which the shop cuts, each a length; a saleable length is a multiple of one.</param>
/// <param name="MinimumCut">The least length that the shop sells.</param>
public sealed record ClothTerms(
    Length UsableWidth,
    Length CrossTrim,
    Length Straightening,
    int Stages,
    ImmutableArray<Length> Increments,
    Length MinimumCut
)
{
    /// <summary>40 in usable, 1/2 in straightening, two stages, eighths and thirds of a yard, at least 1/8 yd.</summary>
    /// <remarks>40 in is what patterns assume of a 42 to 44 in cloth; cut lengths as in docs/sources.md, "yard fractions".</remarks>
    public static ClothTerms Usual { get; } =
        new(
            Length.Inches(40),
            Length.Zero,
            Length.Inches(0, 1, 2),
            2,
            [Length.Yards(new(1, 8)), Length.Yards(new(1, 3))],
            Length.Yards(new(1, 8))
        );

    /// <summary>How strips are cut at the table; null where each is cut in one layer and the edge is squared but once.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public TableTerms? Table { get; init; }

    /// <summary>
    /// What finding the first motif takes where pieces are matched to the print: the repeats, each a part of
    /// <see cref="Straightening"/> or <see cref="CrossTrim"/>; null where they are not.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PrintMatch? Match { get; init; }

    /// <summary>
    /// Length of a printed panel: the cloth is cut apart on the printed lines, no strip goes over one, and whole panels are
    /// sold. Null where it is not printed so.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Panel { get; init; }

    /// <summary>What squaring the edge again takes in all while so many strips are cut one after the other.</summary>
    public Length SquaringAgain(long strips) =>
        Table is { SquareEvery: > 0 } table && strips > 0 ? table.SquaringLoss * (Rational)((strips - 1) / table.SquareEvery) : Length.Zero;

    /// <summary>What one strip holds: usable width less the cross trim.</summary>
    public Length StripLength => UsableWidth - CrossTrim;

    /// <summary>The least saleable length that is not below <paramref name="need"/>.</summary>
    public Length Purchase(Length need) =>
        Length.Max(MinimumCut, Increments.Select(step => need.RoundUpTo(step)).Min());
}

/// <summary>How strips are cut at the table.</summary>
/// <param name="Layers">
/// In how many layers strips are sub-cut. 2: each is folded once, selvage to selvage, so that a pass of the blade gives two
/// pieces; what is over from an odd number is cut opened. 4: as 2, two equal strips laid on one another.
/// </param>
/// <param name="SquareEvery">After so many strips the edge is squared again; 0 for never.</param>
/// <param name="SquaringLoss">What that takes each time.</param>
public sealed record TableTerms(int Layers, int SquareEvery, Length SquaringLoss)
{
    /// <summary>No ruler is longer: 100 in (common practice, no source).</summary>
    public static Length LongestRuler { get; } = Length.Inches(100);

    /// <summary>60 cm, where cloth is measured in metric (common practice, no source).</summary>
    public static Length UsualMetricRuler { get; } = Length.Millimeters(600);

    public static TableTerms Usual { get; } = new(1, 0, Length.Inches(0, 1, 2));

    /// <summary>A longer cut cannot be made in one pass. Above 0; 24 in by default (common practice, no source).</summary>
    public Length RulerLength { get; init; } = Length.Inches(24);

    /// <summary>The same table where cloth must lie flat and its edge is squared but once.</summary>
    public TableTerms Flat => this with { Layers = 1, SquareEvery = 0 };
}

/// <summary>One class of pieces wanted from the cloth; sizes as in <see cref="CutPiece"/>.</summary>
public sealed record ClothDemand(PathId Piece, string Label, Length Width, Length Height, int Count, bool MayTurn)
{
    /// <summary>Whether its height is cut along the selvage, from a section and not from a strip.</summary>
    public bool Lengthwise { get; init; }

    /// <summary>
    /// Whether the kit's spare strips need not replace it: a lengthwise piece has its reserve in its own length, and a
    /// second square for bias binding would double the cloth.
    /// </summary>
    public bool HasOwnReserve { get; init; }
}

/// <summary>Equal strips cut one after the other, right across the width.</summary>
/// <param name="Height">The ruler setting, along the length of the cloth.</param>
/// <param name="Times">How many strips.</param>
/// <param name="SubCuts">What each of them is cut into, from its squared end.</param>
public sealed record StripCut(PathId Id, Length Height, int Times, ImmutableArray<SubCut> SubCuts);

/// <summary>Equal cuts across a strip.</summary>
/// <param name="Width">Along the width of fabric.</param>
/// <param name="Times">How many in each strip.</param>
/// <param name="Stack">What lies in each, from the lower edge of the strip; one entry in two-stage plans.</param>
public sealed record SubCut(PathId Id, Length Width, int Times, ImmutableArray<StackedPiece> Stack);

/// <summary>Pieces of one class in a sub-cut.</summary>
/// <param name="Times">How many above one another.</param>
/// <param name="Turned">Width and height exchanged.</param>
public sealed record StackedPiece(PathId Piece, int Times, bool Turned);

/// <summary>
/// Counts that a person cares for, over the whole length: a strip cut n times counts n times. A section counts as a
/// strip with its lengthwise cuts as sub-cuts, and the strips beside them count as strips.
/// </summary>
/// <param name="StripWidths">Distinct strip heights: ruler settings of the first cuts.</param>
/// <param name="Strips">First cuts: the sum of the strips' times.</param>
/// <param name="SubCuts">
/// Cuts across the strips, one per sub-cut: the sum over strips of times × (sum of its sub-cuts' times). A piece as
/// long as the strip counts as one: its end is squared.
/// </param>
/// <param name="Trims">
/// Further cuts along the strip to bring pieces to size: in each sub-cut one per piece of the stack, less one where
/// the stack is exactly as high as the strip. In two stages: the pieces that are lower than their strip.
/// </param>
/// <param name="Surplus">Pieces cut beyond the demand.</param>
public sealed record ClothFigures(int StripWidths, int Strips, int SubCuts, int Trims, int Surplus)
{
    /// <summary>
    /// Passes of the blade where strips are cut in layers; null where they are not. A strip is one pass; a sub-cut's n pieces
    /// of a folded strip take n / 2, rounded up, and so do their trims; of two equal strips laid on one another both take
    /// what one takes. Sections are cut in one layer.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public long? Passes { get; init; }
}
