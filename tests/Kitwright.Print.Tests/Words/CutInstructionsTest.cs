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

    [Theory]
    [InlineData(1, 24, "A cut across the cloth is 40 in long, and the ruler 24 in: fold the cloth once, selvage to selvage, or lay a second")]
    [InlineData(1, 12, "A cut across the cloth is 40 in long, and the ruler 12 in: fold the cloth 2 times, or lay a second")]
    [InlineData(2, 12, "A cut across the cloth is 20 in long as the cloth is folded, and the ruler 12 in: fold the cloth once more, or lay a second")]
    [InlineData(1, 9, "A cut across the cloth is 40 in long, and the ruler 9 in: lay a second")]
    public void ACutThatIsLongerThanTheRulerIsSaidOnceWithWhatToDo(int layers, int ruler, string begins)
    {
        // 40 in fold to 20 and 10; three folds would be eight layers.
        var said = Said(Tabled(layers, ruler));
        Assert.StartsWith(begins, Assert.Single(said, line => line.Contains("the ruler", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("Close the cutter before a ruler is moved.", said[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 40)]
    [InlineData(2, 24)]
    [InlineData(4, 20)]
    public void WhereTheRulerReachesNothingIsSaidOfIt(int layers, int ruler) =>
        Assert.DoesNotContain(Said(Tabled(layers, ruler)), line => line.Contains("ruler", StringComparison.Ordinal));

    [Theory]
    [InlineData(24, "A cut along the selvage is up to 86 1/2 in long, and the ruler 24 in: fold the length 2 times, end to end, or lay a second")]
    [InlineData(48, "A cut along the selvage is up to 86 1/2 in long, and the ruler 48 in: fold the length once, end to end, or lay a second")]
    public void LengthsAlongTheSelvageAreFoldedEndToEnd(int ruler, string begins)
    {
        var section = new LengthwiseSection(new("cloth/B/section/1"), In(86, 1, 2), [new(default, In(6, 1, 2), 2, [One(Strip)])], []);
        var tabled = Tabled(2, ruler);
        var plan = tabled with { Demand = tabled.Demand.Add(new(Strip, "B5", In(6, 1, 2), In(86, 1, 2), 2, false) { Lengthwise = true }), Sections = [section] };
        Assert.StartsWith(begins, Said(plan)[1], StringComparison.Ordinal);
        Assert.StartsWith(begins, Assert.Single(CutInstructions.SubCuts(plan).Select(Catalog.English.Say), line => line.Contains("the ruler", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void PrintsThatAreMatchedAreNotFoldedForTheRuler()
    {
        var tabled = Tabled(1, 24);
        var said = Said(tabled with { Terms = tabled.Terms with { Match = new() { Along = In(6) } } });
        Assert.Contains(said, line => line.StartsWith("A cut across the cloth is 40 in long, and the ruler 24 in: lay a second", StringComparison.Ordinal));
    }

    private static ClothPlan Tabled(int layers, int ruler)
    {
        var plan = Cloth(
            [new(Goose, "B3", In(5, 3, 8), In(2, 1, 8), 60, true)],
            new StripCut(new("cloth/B/strip/1"), In(2, 1, 8), 9, [new(default, In(5, 3, 8), 7, [One(Goose)])])
        );
        return plan with { Terms = plan.Terms with { Table = TableTerms.Usual with { Layers = layers, RulerLength = In(ruler) } } };
    }
}
