using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sheets;

/// <summary>
/// The tree of cuts on sheets: strips from edge to edge, sub-cuts across a strip, stacks inside a sub-cut; each part must
/// hold what is cut from it, and the last cuts leave no more than they may.
/// </summary>
internal sealed class SheetTreeRules
{
    private readonly SheetPlan plan;
    private readonly FindingList findings;
    private readonly Dictionary<PathId, StockSheet> sheets;
    private readonly Dictionary<PathId, SheetDemand> demand;
    private readonly HashSet<PathId> ids = [];
    private bool countable = true;

    private SheetTreeRules(SheetPlan plan, FindingList findings)
    {
        this.plan = plan;
        this.findings = findings;
        sheets = plan.Problem.Sheets.ToDictionary(sheet => sheet.Id);
        demand = plan.Problem.Demand.ToDictionary(d => d.Piece);
    }

    private SheetTerms Terms => plan.Problem.Terms;

    /// <summary>False where nothing should be counted from the tree.</summary>
    public static bool Check(SheetPlan plan, FindingList findings)
    {
        var rules = new SheetTreeRules(plan, findings);
        foreach (var cut in plan.Cuts)
        {
            rules.OfSheet(cut);
        }

        return rules.countable;
    }

    private void OfSheet(SheetCut cut)
    {
        Identify(cut.Id);
        if (!sheets.TryGetValue(cut.Sheet, out var sheet) || cut.Times <= 0 || cut.Strips.IsEmpty)
        {
            Refuse("check.sheet.empty", cut.Id);
            return;
        }

        var open = sheet.Height is null;
        if (cut.First == FirstCut.Either || (Terms.First != FirstCut.Either && cut.First != Terms.First) || (open && cut.First != FirstCut.Across))
        {
            findings.Add("check.sheet.first-cut", cut.Id.Value);
        }

        if (open && (cut.Times != 1 || plan.Cuts.Length > 1))
        {
            findings.Add("check.sheet.open", cut.Id.Value);
        }

        var (wide, high) = (sheet.Width - Terms.TrimAcross, sheet.Height - Terms.TrimAlong);
        var along = cut.First == FirstCut.Along;
        var used = Length.Zero;
        foreach (var strip in cut.Strips)
        {
            OfStrip(cut, strip, sheet, along ? high ?? Length.Zero : wide, open);
            used += strip.Height * strip.Times;
        }

        if ((along ? wide : high) is { } room && used > room)
        {
            findings.Add("check.sheet.strips-too-high", cut.Id.Value, Say.Inches(used), Say.AtMost(Say.Inches(room)));
        }
    }

    private void OfStrip(SheetCut cut, SheetStrip strip, StockSheet sheet, Length room, bool open)
    {
        Identify(strip.Id);
        if (strip.Height.Sign <= 0 || strip.Times <= 0 || strip.SubCuts.IsEmpty)
        {
            Refuse("check.sheet.empty", strip.Id);
            return;
        }

        if (open ? !Terms.Folds.Contains(strip.Layers) : strip.Layers != 1)
        {
            findings.Add("check.sheet.layers", strip.Id.Value);
            countable = countable && strip.Layers > 0;
        }

        var used = Length.Zero;
        var highest = Length.Zero;
        foreach (var sub in strip.SubCuts)
        {
            if (OfSubCut(cut, strip, sub, sheet) is not { } height)
            {
                continue;
            }

            used += sub.Width * sub.Times * strip.Layers;
            highest = Length.Max(highest, height);
        }

        if (used > room)
        {
            findings.Add("check.sheet.strip-too-long", strip.Id.Value, Say.Inches(used), Say.AtMost(Say.Inches(room)));
        }

        if (countable && highest != strip.Height)
        {
            findings.Add("check.sheet.strip-height", strip.Id.Value, Say.Inches(strip.Height), Say.Inches(highest));
        }

        // One last cut of two stages goes through a whole strip.
        if (Terms is { Stages: 2, Last: LastCut.Homogeneous } && strip.SubCuts.SelectMany(sub => sub.Stack).Select(p => (p.Piece, p.Turned)).Distinct().Count() > 1)
        {
            findings.Add("check.sheet.homogeneous", strip.Id.Value);
        }
    }

    /// <summary>The height of the stack; null where it cannot be said.</summary>
    private Length? OfSubCut(SheetCut cut, SheetStrip strip, SubCut sub, StockSheet sheet)
    {
        Identify(sub.Id);
        if (sub.Width.Sign <= 0 || sub.Times <= 0 || sub.Stack.IsEmpty || sub.Stack.Any(piece => piece.Times <= 0))
        {
            Refuse("check.sheet.empty", sub.Id);
            return null;
        }

        var height = Length.Zero;
        var widths = new List<Length>();
        foreach (var stacked in sub.Stack)
        {
            if (!demand.TryGetValue(stacked.Piece, out var piece))
            {
                Refuse("check.sheet.unknown-piece", sub.Id);
                return null;
            }

            if ((stacked.Turned && !piece.MayTurn) || (!piece.Sheets.IsEmpty && !piece.Sheets.Contains(sheet.Id)))
            {
                findings.Add("check.sheet.not-allowed", sub.Id.Value, ("label", piece.Label));
            }

            // Down the sheet, the strip runs along the sheet's height.
            var swapped = stacked.Turned != (cut.First == FirstCut.Along);
            widths.Add(swapped ? piece.Height : piece.Width);
            height += (swapped ? piece.Width : piece.Height) * stacked.Times;
        }

        if (widths.Max() != sub.Width)
        {
            findings.Add("check.sheet.sub-cut-width", sub.Id.Value, Say.Inches(sub.Width), Say.Inches(widths.Max()));
        }

        if (height > strip.Height)
        {
            findings.Add("check.sheet.stack-too-high", sub.Id.Value, Say.Inches(height), Say.AtMost(Say.Inches(strip.Height)));
        }

        LastCuts(strip, sub, height, widths);
        return height;
    }

    private void LastCuts(SheetStrip strip, SubCut sub, Length height, List<Length> widths)
    {
        var stacked = sub.Stack.Length > 1 || sub.Stack[0].Times > 1;
        if (Terms.Stages == 2 && stacked)
        {
            findings.Add("check.sheet.stages", sub.Id.Value);
        }

        var exact = Terms.Stages == 2 ? height == strip.Height : widths.Distinct().Count() == 1;
        if (Terms.Last != LastCut.NonExact && !exact)
        {
            findings.Add("check.sheet.trimmed", sub.Id.Value);
        }

        if (Terms is { Stages: 3, Last: LastCut.Homogeneous } && sub.Stack.Select(p => (p.Piece, p.Turned)).Distinct().Count() > 1)
        {
            findings.Add("check.sheet.homogeneous", sub.Id.Value);
        }
    }

    private void Identify(PathId id)
    {
        if (!ids.Add(id))
        {
            findings.Add("check.sheet.id-twice", id.Value);
        }
    }

    private void Refuse(string rule, PathId place)
    {
        findings.Add(rule, place.Value);
        countable = false;
    }
}
