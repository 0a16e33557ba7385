using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.App.Commands;

/// <summary>The tree of cuts of a plan of sheets, as <c>cut --json</c> writes it.</summary>
internal sealed class CutTree(SheetPlan plan, Length? unit, Length? keep)
{
    private readonly Dictionary<PathId, SheetDemand> demand = plan.Problem.Demand.ToDictionary(d => d.Piece);

    /// <param name="rollLength">What the plan takes of a cloth of open length.</param>
    public ClothCut Of(SheetCut cut, Length rollLength)
    {
        var sheet = plan.Problem.Sheets.First(s => s.Id == cut.Sheet);
        var along = cut.First == FirstCut.Along;
        return new(
            sheet.Height is null ? null : sheet.Label,
            along ? "along" : "across",
            In(sheet.Width),
            In(sheet.Height ?? rollLength),
            cut.Times,
            [.. cut.Strips.Select(strip => new StripOutcome(In(strip.Height), strip.Layers, strip.Times, [.. strip.SubCuts.Select(sub => Of(strip, sub, along))]))],
            keep is { } least ? [.. Leftovers.Of(plan, cut, least).Select(left => new LeftoverOutcome(In(left.Width), In(left.Height), left.Count))] : []
        );
    }

    private SubCutOutcome Of(SheetStrip strip, SubCut sub, bool along)
    {
        var stack = sub.Stack.Select(piece => Of(piece, along)).ToList();
        var height = stack.Aggregate(Length.Zero, (sum, piece) => sum + (piece.Height.Length * piece.Stacked));
        // One cut above each piece, none above the last where it ends with the strip; and one beside each that is narrower.
        var trims =
            stack.Sum(piece => piece.Stacked)
            - (height == strip.Height ? 1 : 0)
            + stack.Where(piece => piece.Width.Length < sub.Width).Sum(piece => piece.Stacked);
        var lowest = stack[0];
        return new(lowest.Label, lowest.Width, lowest.Height, lowest.Stacked, sub.Times, lowest.Turned, In(sub.Width), trims, [.. stack.Skip(1)]);
    }

    private StackedOutcome Of(StackedPiece stacked, bool along)
    {
        var piece = demand[stacked.Piece];
        var (width, height) = stacked.Turned == along ? (piece.Width, piece.Height) : (piece.Height, piece.Width);
        return new(piece.Label, In(width), In(height), stacked.Times, stacked.Turned);
    }

    private Measured In(Length length) => new(length, unit);
}
