using Kitwright.Checking.Sheets;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Sheets.SheetSamples;

namespace Kitwright.Checking.Tests.Sheets;

/// <summary>Plans of sheets that go wrong in one place are refused, and for the right reason.</summary>
public sealed class SheetMutantTest
{
    private static readonly Length Step = Length.Inches(new(1, 64));

    private static readonly Dictionary<string, (string Rule, SheetPlan Plan)> Wrong = new()
    {
        // What is supposed
        ["four stages"] = ("check.sheet.terms", Quarters.EditTerms(t => t with { Stages = 4 })),
        ["one stage"] = ("check.sheet.terms", Quarters.EditTerms(t => t with { Stages = 1 })),
        ["trim below nothing"] = ("check.sheet.terms", Quarters.EditTerms(t => t with { TrimAcross = -Step })),
        ["straightening below nothing"] = ("check.sheet.terms", Roll.EditTerms(t => t with { TrimAlong = -Step })),
        ["three layers"] = ("check.sheet.terms", Roll.EditTerms(t => t with { Folds = [1, 3] })),
        ["no layer"] = ("check.sheet.terms", Roll.EditTerms(t => t with { Folds = [] })),
        ["sheet of a negative count"] = ("check.sheet.terms", Quarters.EditSheet(0, s => s with { Count = -1 })),
        ["two sheets of one id"] = ("check.sheet.terms", Quarters.EditSheet(0, s => s with { Id = new("sheet/square") })),
        ["two pieces of one id"] = ("check.sheet.terms", Quarters.EditDemand(0, d => d with { Piece = new("piece/B") })),
        ["piece of no width"] = ("check.sheet.terms", Quarters.EditDemand(0, d => d with { Width = Length.Zero })),
        ["a second cloth beside the roll"] = ("check.sheet.terms", Roll with { Problem = Roll.Problem with { Sheets = Roll.Problem.Sheets.Add(Quarters.Problem.Sheets[0]) } }),

        // The tree of cuts
        ["unknown sheet"] = ("check.sheet.empty", Quarters.EditCut(0, c => c with { Sheet = new("sheet/none") })),
        ["sheet cut no times"] = ("check.sheet.empty", Quarters.EditCut(0, c => c with { Times = 0 })),
        ["sheet without strips"] = ("check.sheet.empty", Quarters.EditCut(0, c => c with { Strips = [] })),
        ["strip of no height"] = ("check.sheet.empty", Quarters.EditStrip(0, 0, s => s with { Height = Length.Zero })),
        ["strip cut no times"] = ("check.sheet.empty", Quarters.EditStrip(0, 0, s => s with { Times = 0 })),
        ["strip without cuts"] = ("check.sheet.empty", Quarters.EditStrip(0, 0, s => s with { SubCuts = [] })),
        ["cut of no width"] = ("check.sheet.empty", Quarters.EditSub(0, 0, s => s with { Width = Length.Zero })),
        ["cut made no times"] = ("check.sheet.empty", Quarters.EditSub(0, 0, s => s with { Times = 0 })),
        ["cut with nothing in it"] = ("check.sheet.empty", Quarters.EditSub(0, 0, s => s with { Stack = [] })),
        ["piece stacked no times"] = ("check.sheet.empty", Quarters.EditPiece(0, 0, p => p with { Times = 0 })),
        ["piece that nobody asked for"] = ("check.sheet.unknown-piece", Quarters.EditPiece(0, 0, p => p with { Piece = new("piece/Z") })),
        ["first cuts either way"] = ("check.sheet.first-cut", Quarters.EditCut(0, c => c with { First = FirstCut.Either })),
        ["first cuts the way that is not allowed"] = ("check.sheet.first-cut", Quarters.EditTerms(t => t with { First = FirstCut.Across })),
        ["roll cut lengthwise"] = ("check.sheet.first-cut", Roll.EditCut(0, c => c with { First = FirstCut.Along })),
        ["roll cut twice"] = ("check.sheet.open", Roll.EditCut(0, c => c with { Times = 2 })),
        ["strips higher than the sheet"] = ("check.sheet.strips-too-high", Quarters.EditStrip(1, 0, s => s with { Times = 3 })),
        ["strips wider than the sheet, lengthwise"] = ("check.sheet.strips-too-high", Quarters.EditStrip(2, 0, s => s with { Times = 3 })),
        ["one cut too many across a strip"] = ("check.sheet.strip-too-long", Quarters.EditSub(0, 0, s => s with { Times = 3 })),
        ["one cut too many in layers"] = ("check.sheet.strip-too-long", Roll.EditSub(0, 0, s => s with { Times = 5 })),
        ["narrower sheet"] = ("check.sheet.strip-too-long", Quarters.EditSheet(0, s => s with { Width = s.Width - Step })),
        ["lower sheet"] = ("check.sheet.strips-too-high", Quarters.EditSheet(0, s => s with { Height = s.Height - Step })),
        ["lower sheet, cut lengthwise"] = ("check.sheet.strip-too-long", Quarters.EditSheet(1, s => s with { Height = s.Height - Step })),
        ["trim that leaves too little"] = ("check.sheet.strip-too-long", Quarters.EditTerms(t => t with { TrimAcross = Step })),
        ["strip higher than its pieces"] = ("check.sheet.strip-height", Quarters.EditStrip(1, 0, s => s with { Height = s.Height + Step })),
        ["strip lower than its pieces"] = ("check.sheet.stack-too-high", Quarters.EditStrip(1, 0, s => s with { Height = s.Height - Step })),
        ["sheet cut in two layers"] = ("check.sheet.layers", Quarters.EditStrip(1, 1, s => s with { Layers = 2 })),
        ["roll in layers that are not allowed"] = ("check.sheet.layers", Roll.EditTerms(t => t with { Folds = [1] })),
        ["cut wider than its piece"] = ("check.sheet.sub-cut-width", Quarters.EditSub(1, 1, s => s with { Width = s.Width - Step })),
        ["piece turned that may not be"] = ("check.sheet.not-allowed", Quarters.EditPiece(1, 1, p => p with { Turned = true })),
        ["piece from a cloth that is not its own"] = ("check.sheet.not-allowed", Quarters.EditPiece(0, 0, p => p with { Piece = new("piece/C") })),
        ["stack in two stages"] = ("check.sheet.stages", Quarters.EditTerms(t => t with { Stages = 2 })),
        ["trim where nothing may be trimmed"] = ("check.sheet.trimmed", Trimmed.EditTerms(t => t with { Last = LastCut.Exact })),
        ["two kinds under one last cut"] = ("check.sheet.homogeneous", Trimmed.EditTerms(t => t with { Last = LastCut.Homogeneous })),
        ["two kinds in one stack"] = ("check.sheet.homogeneous", Mixed),
        ["two strips of one id"] = ("check.sheet.id-twice", Quarters.EditStrip(1, 1, s => s with { Id = new("cut/sheet/2/strip/1") })),

        // Counts
        ["one piece fewer cut"] = ("check.sheet.count", Quarters.EditSub(1, 1, s => s with { Times = 1 })),
        ["one piece more cut"] = ("check.sheet.count", Quarters.EditCut(2, c => c with { Times = 2 })),
        ["one more asked for"] = ("check.sheet.count", Quarters.EditDemand(1, d => d with { Count = 6 })),
        ["sheet left out"] = ("check.sheet.count", Quarters with { Cuts = Quarters.Cuts.RemoveAt(2) }),
        ["short of what is cut"] = ("check.sheet.count", Quarters with { Short = [new(new("piece/A"), 1)] }),
        ["short of nothing"] = ("check.sheet.short", Quarters with { Short = [new(new("piece/A"), 0)] }),
        ["short of the same twice"] = ("check.sheet.short", Short with { Short = [.. Short.Short, .. Short.Short] }),
        ["short of what nobody asked for"] = ("check.sheet.short", Quarters with { Short = [new(new("piece/Z"), 1)] }),
        ["sheet used more often than it is there"] = ("check.sheet.supply", Quarters.EditSheet(0, s => s with { Count = 0 })),

        // Figures, cost and bound
        ["sheets miscounted"] = ("check.sheet.figure", Quarters with { Figures = Quarters.Figures with { Sheets = 2 } }),
        ["strips miscounted"] = ("check.sheet.figure", Quarters with { Figures = Quarters.Figures with { Strips = 4 } }),
        ["cuts across miscounted"] = ("check.sheet.figure", Quarters with { Figures = Quarters.Figures with { SubCuts = 8 } }),
        ["pieces miscounted"] = ("check.sheet.figure", Quarters with { Figures = Quarters.Figures with { Pieces = 12 } }),
        ["cost understated"] = ("check.sheet.cost", Quarters with { Cost = 487 }),
        ["cost of the sheet changed"] = ("check.sheet.cost", Quarters.EditSheet(0, s => s with { Cost = 208 })),
        ["bound one unit too high"] = ("check.sheet.bound", Quarters.EditProof(p => p with { Bound = 400 })),
        ["bound one unit too low"] = ("check.sheet.bound", Quarters.EditProof(p => p with { Bound = 384 })),
        ["bound of a roll that is no sum of heights"] = ("check.sheet.bound", Roll.EditProof(p => p with { Bound = 5, Status = ProofStatus.Within })),
        ["bound above the area"] = ("check.sheet.bound", ByArea.EditProof(p => p with { Bound = 400 })),
        ["bound of three stages by strips that are only as high as a piece"] = ("check.sheet.bound", Tall.EditProof(p => p with { Bound = 7, Status = ProofStatus.Proved })),
        ["bound left out"] = ("check.sheet.bound", Quarters.EditProof(p => p with { Bound = null })),
        ["proved claimed without a proof"] = ("check.sheet.bound", Quarters.EditProof(p => p with { Status = ProofStatus.Proved })),
        ["not enough claimed where there is"] = ("check.sheet.bound", Quarters.EditProof(p => p with { EnoughExcluded = true })),
        ["not enough claimed without a proof"] = ("check.sheet.bound", Short.EditProof(p => p with { Duals = [50 * Scale] })),
        ["duals too dear"] = ("check.sheet.bound", Quarters.EditProof(p => p with { Duals = [800, 192, 288] })),
        ["duals of another demand"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { Duals = [1] })),
        ["dual below nothing"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { Duals = [400, -1, 288] })),
        ["unit that does not divide the sizes"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { Unit = Length.Inches(3) })),
        ["cost unit that does not divide the costs"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { CostUnit = 7 })),
        ["no scale"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { Scale = 0 })),
        ["unit too fine to work out"] = ("check.sheet.bound-figures", Quarters.EditProof(p => p with { Unit = new(new Rational(1, 1L << 40)) })),
    };

    public static TheoryData<string> Names { get; } = [.. Wrong.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_wrong_plan_of_sheets_is_refused(string name)
    {
        var (rule, plan) = Wrong[name];
        var findings = SheetChecker.Check(plan);
        Assert.Contains(rule, findings.Select(f => f.Rule));
        Assert.All(findings, Mutants.InWords);
    }

    [Fact]
    public void The_samples_are_right()
    {
        foreach (var plan in new[] { Quarters, ByArea, Roll, Tall, Short, Trimmed })
        {
            Assert.Empty(SheetChecker.Check(plan).Select(f => f.Rule));
        }
    }

    /// <summary>Without duals the bound is the area's, from the cheapest cloth first.</summary>
    private static SheetPlan ByArea => Quarters.EditProof(p => p with { Duals = [] });

    /// <summary>
    /// Two pieces 1 by 3 in and three 1 by 2 in from a roll 2 in wide. A strip 6 in high holds them all in two stacks; strips
    /// as high as a piece take 7 in, and their duals (3 and 2 halves an inch) must not count as a bound of 7.
    /// </summary>
    private static SheetPlan Tall =>
        new(
            new(
                SheetTerms.Usual with { First = FirstCut.Across },
                [new(new("sheet/roll"), "roll", Length.Inches(2), null, null, 1)],
                [Piece("A", 3, 2), Piece("B", 2, 3)],
                SheetGoal.Cost
            ),
            [
                new(
                    new("cut/1"),
                    new("sheet/roll"),
                    FirstCut.Across,
                    1,
                    [
                        new(new("cut/1/strip/1"), Length.Inches(3), 1, 1, [new(new("cut/1/strip/1/cut/1"), Length.Inch, 2, [new(new("piece/A"), 1, false)])]),
                        new(new("cut/1/strip/2"), Length.Inches(2), 1, 1, [new(new("cut/1/strip/2/cut/1"), Length.Inch, 2, [new(new("piece/B"), 1, false)])]),
                        new(new("cut/1/strip/3"), Length.Inches(2), 1, 1, [new(new("cut/1/strip/3/cut/1"), Length.Inch, 1, [new(new("piece/B"), 1, false)])]),
                    ]
                ),
            ],
            [],
            7,
            new(1, 3, 5, 5),
            new(ProofStatus.Within, 6, false, Length.Inch, 1, Scale, [3 * Scale / 2, Scale], "by-hand", 0, "done")
        );

    private static SheetDemand Piece(string label, int height, int count) =>
        new(new($"piece/{label}"), label, Length.Inch, Length.Inches(height), count, false, []);

    /// <summary>The sheet that was cut along holds a lower piece beside the others, which is trimmed; in two stages.</summary>
    private static SheetPlan Trimmed =>
        new(
            new(
                SheetTerms.Usual with { Stages = 2 },
                [Quarters.Problem.Sheets[1]],
                [Quarters.Problem.Demand[1] with { Count = 2 }, Quarters.Problem.Demand[1] with { Piece = new("piece/D"), Label = "D", Width = Length.Inches(5), Count = 1 }],
                SheetGoal.Cost
            ),
            [
                Quarters.Cuts[2] with
                {
                    Strips =
                    [
                        Quarters.Cuts[2].Strips[0] with
                        {
                            SubCuts =
                            [
                                Quarters.Cuts[2].Strips[0].SubCuts[0] with { Times = 2 },
                                new(new("cut/sheet/3/strip/1/cut/2"), Length.Inches(4), 1, [new(new("piece/D"), 1, false)]),
                            ],
                        },
                    ],
                },
            ],
            [],
            144,
            new(1, 1, 3, 3),
            new(ProofStatus.Within, 68, false, Length.Inch, 1, 1, [24, 20], "by-hand", 0, "done")
        );

    /// <summary>Three stages, homogeneous; in one stack lie pieces of two labels and one size.</summary>
    private static SheetPlan Mixed =>
        Quarters
            .EditTerms(t => t with { Last = LastCut.Homogeneous })
            .EditSub(0, 0, s => s with { Stack = [new(new("piece/A"), 1, false), new(new("piece/B"), 1, false)] });
}
