using System.Collections.Immutable;
using Kitwright.Cutting.Instructions;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Print.Tests.Words;

public sealed class CutInstructionsTest
{
    private static readonly PathId Goose = new("piece/B3"),
        Star = new("piece/B4"),
        Strip = new("piece/B5");

    private static Length In(int whole, int over = 0, int under = 1) => Length.Inches(whole, over, under);

    private static StackedPiece One(PathId piece, bool turned = false) => new(piece, 1, turned);

    private static ClothPlan Cloth(ImmutableArray<ClothDemand> demand, params ImmutableArray<StripCut> strips)
    {
        var cut = strips.Aggregate(ClothTerms.Usual.Straightening, (sum, s) => sum + (s.Height * s.Times));
        return new(
            new("cloth/B"),
            "B",
            ["star"],
            null,
            ClothTerms.Usual,
            demand,
            strips,
            cut,
            Length.Zero,
            ClothTerms.Usual.Purchase(cut),
            new(ProofStatus.Within, cut, Length.Inches(new(1, 8)), 1, [], "by hand", 0, "done", Searched: false),
            new(0, 0, 0, 0, 0)
        );
    }

    private static string[] Said(ClothPlan plan) => [.. CutInstructions.Of(plan).Select(Catalog.English.Say)];

    [Fact]
    public void StripsAreCutThenSubCutAndPiecesBeyondTheDemandAreRoom()
    {
        // 40 in hold 7 of 5 3/8: 9 strips hold 63, of which 60 are wanted.
        var plan = Cloth(
            [new(Goose, "B3", In(5, 3, 8), In(2, 1, 8), 60, true)],
            new StripCut(new("cloth/B/strip/1"), In(2, 1, 8), 9, [new(default, In(5, 3, 8), 7, [One(Goose)])])
        );
        Assert.Equal(
            [
                "Square one end of the cloth; 1/2 in is allowed for it.",
                "Cut 9 strips 2 1/8 in × WOF; sub-cut into 60 of 2 1/8 × 5 3/8 (B3, room for 3 more).",
            ],
            Said(plan)
        );
    }

    [Fact]
    public void WidestStripsComeFirstAndClothAddsUp()
    {
        var plan = Cloth(
            [new(Goose, "B3", In(3), In(2), 13, true), new(Star, "B4", In(4), In(4), 10, true), new(Strip, "B5", In(40), In(2, 1, 2), 3, false)],
            new StripCut(new("cloth/B/strip/1"), In(2), 1, [new(default, In(3), 13, [One(Goose)])]),
            new StripCut(new("cloth/B/strip/2"), In(4), 1, [new(default, In(4), 10, [One(Star)])]),
            new StripCut(new("cloth/B/strip/3"), In(2, 1, 2), 3, [new(default, In(40), 1, [One(Strip)])])
        );
        Assert.Equal(
            [
                "Square one end of the cloth; 1/2 in is allowed for it.",
                "Cut 1 strip 4 in × WOF; sub-cut into 10 squares of 4 (B4).",
                "Cut 3 strips 2 1/2 in × WOF (B5).",
                "Cut 1 strip 2 in × WOF; sub-cut into 13 of 2 × 3 (B3).",
            ],
            Said(plan)
        );
        Assert.Equal([In(0, 1, 2), In(4, 1, 2), In(12), In(14)], CutInstructions.Lines(plan).Select(line => line.Used));
        Assert.Equal(plan.Cut, CutInstructions.Lines(plan)[^1].Used);
    }

    [Fact]
    public void StripsOfOneHeightAreCutUnderOneSettingAndThenSharedOut()
    {
        var plan = Cloth(
            [new(Star, "B4", In(2, 1, 2), In(2, 1, 2), 180, true), new(Goose, "B3", In(3), In(2, 1, 2), 13, true), new(Strip, "B5", In(40), In(2, 1, 2), 4, false)],
            new StripCut(new("cloth/B/strip/1"), In(2, 1, 2), 11, [new(default, In(2, 1, 2), 16, [One(Star)])]),
            new StripCut(new("cloth/B/strip/2"), In(2, 1, 2), 4, [new(default, In(40), 1, [One(Strip)])]),
            new StripCut(new("cloth/B/strip/3"), In(2, 1, 2), 1, [new(default, In(3), 13, [One(Goose)])]),
            new StripCut(new("cloth/B/strip/4"), In(2, 1, 2), 1, [new(default, In(2, 1, 2), 16, [One(Star)])])
        );
        Assert.Equal(
            [
                "Square one end of the cloth; 1/2 in is allowed for it.",
                "Cut 17 strips 2 1/2 in × WOF. From 11 of them sub-cut 176 squares of 2 1/2 (B4).",
                "Keep 4 more of them whole (B5).",
                "From 1 more of them sub-cut 13 of 2 1/2 × 3 (B3).",
                "From the other one sub-cut 4 squares of 2 1/2 (B4, room for 12 more).",
            ],
            Said(plan)
        );
        Assert.Equal([true, true, false, false, false], CutInstructions.Lines(plan).Select(line => line.UsesCloth));
        Assert.Equal(plan.Cut, CutInstructions.Lines(plan)[1].Used);
    }

    [Fact]
    public void AMixedStripNamesEachPieceAndWhatIsTrimmed()
    {
        var plan = Cloth(
            [new(Goose, "B3", In(3), In(2), 8, true), new(Star, "B4", In(4), In(4), 6, true)],
            new StripCut(
                new("cloth/B/strip/1"),
                In(4),
                2,
                [new(default, In(4), 3, [One(Star)]), new(default, In(3), 2, [new(Goose, 2, false)])]
            )
        );
        Assert.Equal(
            "Cut 2 strips 4 in × WOF; sub-cut into 6 squares of 4 (B4) and 4 of 4 × 3, each cut again for 8 of 2 × 3 (B3).",
            Said(plan)[1]
        );

        var trimmed = Cloth(
            [new(Goose, "B3", In(3), In(2), 2, true), new(Star, "B4", In(4), In(4), 3, true)],
            new StripCut(
                new("cloth/B/strip/1"),
                In(4),
                1,
                [new(default, In(4), 3, [One(Star)]), new(default, In(2), 2, [One(Goose, turned: true)])]
            )
        );
        Assert.Equal(
            "Cut 1 strip 4 in × WOF; sub-cut into 3 squares of 4 (B4) and 2 of 3 × 2 (B3), trimmed from 4 × 2.",
            Said(trimmed)[1]
        );
    }
}
