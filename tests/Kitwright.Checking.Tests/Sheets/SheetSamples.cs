using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Tests.Sheets;

/// <summary>Plans of sheets made by hand, and changes to them.</summary>
internal static class SheetSamples
{
    public const long Scale = 64;

    /// <summary>
    /// Two kinds of sheet in three stages. A is stacked, B lies on a sheet cut across and on one cut along, C may be cut
    /// from the second kind only. The duals are areas, so the bound is the area of all pieces: 392 square inches.
    /// </summary>
    public static SheetPlan Quarters { get; } =
        new(
            new(
                SheetTerms.Usual,
                [Sheet("long", 20, 10, 2, 200), Sheet("square", 12, 12, null, 144)],
                [Piece("A", 10, 5, 4, true), Piece("B", 6, 4, 5, false), Piece("C", 12, 3, 2, false) with { Sheets = [new("sheet/square")] }],
                SheetGoal.Cost
            ),
            [
                new(new("cut/sheet/1"), new("sheet/long"), FirstCut.Across, 1, [Strip("cut/sheet/1/strip/1", 10, 1, Sub("cut/sheet/1/strip/1/cut/1", 10, 2, new StackedPiece(new("piece/A"), 2, false)))]),
                new(
                    new("cut/sheet/2"),
                    new("sheet/square"),
                    FirstCut.Across,
                    1,
                    [
                        Strip("cut/sheet/2/strip/1", 3, 2, Sub("cut/sheet/2/strip/1/cut/1", 12, 1, new StackedPiece(new("piece/C"), 1, false))),
                        Strip("cut/sheet/2/strip/2", 4, 1, Sub("cut/sheet/2/strip/2/cut/1", 6, 2, new StackedPiece(new("piece/B"), 1, false))),
                    ]
                ),
                new(new("cut/sheet/3"), new("sheet/square"), FirstCut.Along, 1, [Strip("cut/sheet/3/strip/1", 6, 1, Sub("cut/sheet/3/strip/1/cut/1", 4, 3, new StackedPiece(new("piece/B"), 1, false)))]),
            ],
            [],
            488,
            new(3, 5, 9, 11),
            new(ProofStatus.Within, 392, false, Length.Inch, 8, Scale, [50 * 8, 24 * 8, 36 * 8], "by-hand", 7, "done")
        );

    /// <summary>A roll of 40 in, strips in two layers and in one. Eight pieces fill a strip of 4 in, so ten take at least 5 and, in strips of 4, 8.</summary>
    public static SheetPlan Roll { get; } =
        new(
            new(
                SheetTerms.Usual with { Stages = 2, First = FirstCut.Across, TrimAlong = Length.Inches(0, 1, 2), Folds = [1, 2] },
                [new(new("sheet/roll"), "roll", Length.Inches(40), null, null, 1)],
                [Piece("P", 5, 4, 10, false)],
                SheetGoal.Cost
            ),
            [
                new(
                    new("cut/1"),
                    new("sheet/roll"),
                    FirstCut.Across,
                    1,
                    [
                        Strip("cut/1/strip/1", 4, 1, Sub("cut/1/strip/1/cut/1", 5, 4, new StackedPiece(new("piece/P"), 1, false))) with { Layers = 2 },
                        Strip("cut/1/strip/2", 4, 1, Sub("cut/1/strip/2/cut/1", 5, 2, new StackedPiece(new("piece/P"), 1, false))),
                    ]
                ),
            ],
            [],
            8,
            new(1, 2, 6, 10),
            new(ProofStatus.Proved, 8, false, Length.Inch, 1, Scale, [32], "by-hand", 0, "done")
        );

    /// <summary>One sheet of 10 by 10 in, homogeneous: four pieces are wanted, three fit and it is proved that four do not.</summary>
    public static SheetPlan Short { get; } =
        new(
            new(
                SheetTerms.Usual with { Stages = 2, First = FirstCut.Across, Last = LastCut.Homogeneous },
                [Sheet("one", 10, 10, 1, 100)],
                [Piece("A", 10, 3, 4, false)],
                SheetGoal.FewestSheets
            ),
            [new(new("cut/sheet/1"), new("sheet/one"), FirstCut.Across, 1, [Strip("cut/sheet/1/strip/1", 3, 3, Sub("cut/sheet/1/strip/1/cut/1", 10, 1, new StackedPiece(new("piece/A"), 1, false)))])],
            [new(new("piece/A"), 1)],
            100,
            new(1, 3, 3, 3),
            // The sheet counts 100 for itself and 100 for its area; three pieces at 67 are worth 201 of them.
            new(ProofStatus.Within, null, true, Length.Inch, 1, Scale, [67 * Scale], "by-hand", 0, "done")
        );

    public static SheetPlan EditCut(this SheetPlan plan, int cut, Func<SheetCut, SheetCut> change) =>
        plan with { Cuts = plan.Cuts.SetItem(cut, change(plan.Cuts[cut])) };

    public static SheetPlan EditStrip(this SheetPlan plan, int cut, int strip, Func<SheetStrip, SheetStrip> change) =>
        plan.EditCut(cut, c => c with { Strips = c.Strips.SetItem(strip, change(c.Strips[strip])) });

    public static SheetPlan EditSub(this SheetPlan plan, int cut, int strip, Func<SubCut, SubCut> change) =>
        plan.EditStrip(cut, strip, s => s with { SubCuts = s.SubCuts.SetItem(0, change(s.SubCuts[0])) });

    public static SheetPlan EditPiece(this SheetPlan plan, int cut, int strip, Func<StackedPiece, StackedPiece> change) =>
        plan.EditSub(cut, strip, s => s with { Stack = s.Stack.SetItem(0, change(s.Stack[0])) });

    public static SheetPlan EditDemand(this SheetPlan plan, int demand, Func<SheetDemand, SheetDemand> change) =>
        plan with { Problem = plan.Problem with { Demand = plan.Problem.Demand.SetItem(demand, change(plan.Problem.Demand[demand])) } };

    public static SheetPlan EditSheet(this SheetPlan plan, int sheet, Func<StockSheet, StockSheet> change) =>
        plan with { Problem = plan.Problem with { Sheets = plan.Problem.Sheets.SetItem(sheet, change(plan.Problem.Sheets[sheet])) } };

    public static SheetPlan EditTerms(this SheetPlan plan, Func<SheetTerms, SheetTerms> change) =>
        plan with { Problem = plan.Problem with { Terms = change(plan.Problem.Terms) } };

    public static SheetPlan EditProof(this SheetPlan plan, Func<SheetProof, SheetProof> change) => plan with { Proof = change(plan.Proof) };

    private static StockSheet Sheet(string label, int width, int height, int? count, int cost) =>
        new(new($"sheet/{label}"), label, Length.Inches(width), Length.Inches(height), count, cost);

    private static SheetDemand Piece(string label, int width, int height, int count, bool mayTurn) =>
        new(new($"piece/{label}"), label, Length.Inches(width), Length.Inches(height), count, mayTurn, []);

    private static SheetStrip Strip(string id, int height, int times, params ImmutableArray<SubCut> subs) => new(new(id), Length.Inches(height), 1, times, subs);

    private static SubCut Sub(string id, int width, int times, params ImmutableArray<StackedPiece> stack) => new(new(id), Length.Inches(width), times, stack);
}
