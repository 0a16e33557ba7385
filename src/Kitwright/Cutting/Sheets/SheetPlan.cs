using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>How pieces are cut from sheets of cloth.</summary>
/// <param name="Cuts">The sheets that are touched, equal ones together.</param>
/// <param name="Short">Pieces that are not cut, for want of cloth.</param>
/// <param name="Cost">Of all sheets touched; of a cloth of open length, of what is taken of it.</param>
public sealed record SheetPlan(
    SheetProblem Problem,
    ImmutableArray<SheetCut> Cuts,
    ImmutableArray<ShortPiece> Short,
    Rational Cost,
    SheetFigures Figures,
    SheetProof Proof
);

/// <summary>Equal sheets cut alike.</summary>
/// <param name="Id"><c>cut/1</c>.</param>
/// <param name="First">Across or along, never either.</param>
/// <param name="Strips">
/// First cuts from one edge on. A strip's height is measured at right angles to the first cut, its pieces' widths
/// along it.
/// </param>
public sealed record SheetCut(PathId Id, PathId Sheet, FirstCut First, int Times, ImmutableArray<SheetStrip> Strips);

/// <summary>Equal strips.</summary>
/// <param name="Layers">In how many layers it is cut.</param>
/// <param name="SubCuts">In one layer, from the squared end.</param>
public sealed record SheetStrip(PathId Id, Length Height, int Layers, int Times, ImmutableArray<SubCut> SubCuts);

/// <summary>Pieces that are missing.</summary>
public sealed record ShortPiece(PathId Piece, int Count);

/// <summary>Counts over all sheets: a strip cut n times counts n times.</summary>
/// <param name="Sheets">Sheets touched.</param>
/// <param name="Strips">First cuts.</param>
/// <param name="SubCuts">Cuts across strips, each through all layers.</param>
/// <param name="Pieces">Pieces cut.</param>
public sealed record SheetFigures(int Sheets, int Strips, int SubCuts, long Pieces);

/// <summary>
/// What is proved about the cost, and the whole numbers from which the bound can be recomputed.
/// </summary>
/// <remarks>
/// All in whole units of length and of cost. Demand <c>i</c> is wanted <c>d</c> times and has the dual <c>π ≥ 0</c>
/// (over <paramref name="Scale"/>); sheet <c>s</c> costs <c>c</c> and is there <c>n</c> times. <c>V(s)</c> is the
/// greatest sum of duals that one sheet can hold when cut in the stages allowed, each demand held to <c>d</c> in any one
/// strip or stack, but not over the sheet; a strip or a sheet is never worth more than all demands that fit.
/// <c>ρ = max(1, max V(s) / (c · Scale))</c> over sheets without a count; with a count,
/// <c>μ(s) = max(0, V(s) / ρ − c · Scale)</c>. Then no plan that cuts everything costs less than
/// <c>⌈(Σ d·π / ρ − Σ n·μ) / Scale⌉</c> cost units (A. A. Farley, Operations Research 38(5), 1990, with rows for the
/// counts). Of a cloth of open length in two stages every candidate strip is a sheet, which costs its height; in three stages,
/// where strips may be as high as one likes, a row of slices of pieces, one unit high and worth <c>⌈π / height⌉</c> each, is
/// one. The bound on such a length is rounded up to a sum of heights in which pieces may lie. For the goal of fewest sheets a sheet costs the area of all sheets
/// (of each kind at most 1,000) and its own, in square units, and the bound on that, divided by the dearest sheet and
/// rounded up, is the bound on their number.
/// </remarks>
/// <param name="Bound">
/// No plan that cuts everything costs less or, for the goal of fewest sheets, touches fewer; null where pieces are missing.
/// </param>
/// <param name="EnoughExcluded">True where it is proved that these sheets cannot hold all pieces.</param>
/// <param name="Unit">Every width and height of the demand is a whole multiple of it.</param>
/// <param name="CostUnit">Every cost is a whole multiple of it.</param>
/// <param name="Duals">One per demand; empty where the bound is by area.</param>
public sealed record SheetProof(
    ProofStatus Status,
    Rational? Bound,
    bool EnoughExcluded,
    Length Unit,
    Rational CostUnit,
    long Scale,
    ImmutableArray<long> Duals,
    string Method,
    long Work,
    string StoppedBy
);
