using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Kitwright.Checking.Sheets;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Optimise.Sheets;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Optimise.Tests.Sheets;

/// <summary>Cutting from sheets: published charts and instances, every way of cutting on small cases, and laws.</summary>
public sealed class SheetCutterTest
{
    // A busy machine must not stop a search: only the work limit may.
    private static readonly WorkBudget Little = new("test", 100_000_000, TimeSpan.FromHours(1));

    /// <summary>For a handful of pieces, of which there are a hundred cases.</summary>
    private static readonly WorkBudget VeryLittle = Little with { Steps = 25_000_000 };

    private static readonly SheetTerms TwoStages = SheetTerms.Usual with { Stages = 2, First = FirstCut.Across };

    /// <summary>
    /// Squares from a fat quarter of 18 by 22 in [QC-MC]: the published number comes out of one, and one more does not.
    /// </summary>
    [Theory]
    [InlineData("2", 99)]
    [InlineData("2 1/2", 56)]
    [InlineData("2 7/8", 42)]
    [InlineData("3", 42)]
    [InlineData("3 1/2", 30)]
    [InlineData("3 7/8", 20)]
    [InlineData("4", 20)]
    [InlineData("4 1/2", 16)]
    [InlineData("4 7/8", 12)]
    [InlineData("5", 12)]
    [InlineData("5 1/2", 12)]
    [InlineData("5 7/8", 9)]
    [InlineData("6", 9)]
    [InlineData("6 1/2", 6)]
    [InlineData("6 7/8", 6)]
    public void Squares_from_a_fat_quarter(string side, int published)
    {
        Assert.True(LengthText.TryParse(side, out var length));
        int Touched(int squares) => Cut(FatQuarters(null, Piece("A", length, length, squares)), Little).Figures.Sheets;

        Assert.Equal(1, Touched(published));
        Assert.Equal(2, Touched(published + 1));
    }

    /// <summary>Fifty-six squares of 2 1/2 in from a fat quarter of 18 by 21 in [MQF].</summary>
    [Fact]
    public void Squares_from_a_short_fat_quarter()
    {
        var quarter = Sheet("quarter", Length.Inches(21), Length.Inches(18), 1);
        var piece = Piece("A", Length.Inches(2, 1, 2), Length.Inches(2, 1, 2), 56);

        Assert.Empty(Cut(new(TwoStages, [quarter], [piece], SheetGoal.Cost), Little).Short);
    }

    /// <summary>The same cost as by trying every cut, and never a bound above it; each plan passes its check.</summary>
    [Theory]
    [InlineData(2, LastCut.NonExact)]
    [InlineData(2, LastCut.Exact)]
    [InlineData(3, LastCut.NonExact)]
    [InlineData(3, LastCut.Exact)]
    public void Small_cases_cost_what_trying_everything_finds(int stages, LastCut last)
    {
        var random = new Random(stages + (10 * (int)last));
        for (var i = 0; i < 40; i++)
        {
            var terms = SheetTerms.Usual with { Stages = stages, Last = last, First = (FirstCut)random.Next(3) };
            ImmutableArray<StockSheet> sheets = [Whole("S", 5 + random.Next(4), 4 + random.Next(4)), Whole("T", 8, 8)];
            ImmutableArray<SheetDemand> demand =
            [
                .. Enumerable.Range(0, 3).Select(n => Piece($"P{n}", Length.Inches(1 + random.Next(5)), Length.Inches(1 + random.Next(4)), 1 + random.Next(3), random.Next(2) == 0)),
            ];
            var problem = new SheetProblem(terms, sheets, demand, SheetGoal.Cost);

            var plan = Cut(problem, VeryLittle);
            var least = EveryWayOfSheets.Least(problem);

            Assert.Empty(plan.Short);
            Assert.True(plan.Proof.Bound <= least, $"case {i}: the bound {plan.Proof.Bound} is above {least}");
            Assert.True(least == plan.Cost, $"case {i}: {plan.Cost} for {least}: {System.Text.Json.JsonSerializer.Serialize(plan, PlanJson.Options)}");
        }
    }

    [Fact]
    public void What_there_is_not_enough_of_is_short_and_the_rest_is_cut()
    {
        var plan = Cut(FatQuarters(2, Piece("A", Length.Inches(6), Length.Inches(6), 20)), Little);

        Assert.Equal([(new PathId("piece/A"), 2)], plan.Short.Select(s => (s.Piece, s.Count)));
        Assert.True(plan.Proof.EnoughExcluded);
        Assert.Null(plan.Proof.Bound);
    }

    [Fact]
    public void A_piece_wider_than_the_folded_cloth_is_named_with_the_remedy()
    {
        var roll = new StockSheet(new("sheet/roll"), "roll", Length.Inches(40), null, null, 1);
        ImmutableArray<SheetDemand> demand = [Piece("A", Length.Inches(30), Length.Inches(3), 4), Piece("B", Length.Inches(5), Length.Inches(5), 20)];
        Findings.Checked<SheetPlan> With(params ImmutableArray<int> folds) =>
            SheetCutter.Cut(new(TwoStages with { Folds = folds }, [roll], demand, SheetGoal.Cost), VeryLittle, 0, TestContext.Current.CancellationToken);
        var folded = With(2);

        Assert.Equal(("sheets.too-wide-folded", "piece/A"), (folded.Findings[0].Rule, folded.Findings[0].Place));
        Assert.Equal([(new PathId("piece/A"), 4)], folded.Value!.Short.Select(s => (s.Piece, s.Count)));
        Assert.Empty(SheetChecker.Check(folded.Value));
        Assert.Empty(With(1, 2).Findings);
    }

    [Fact]
    public void The_fewest_sheets_are_touched_whatever_they_cost()
    {
        // Six small sheets cost less, two large ones are fewer.
        ImmutableArray<StockSheet> sheets = [Whole("small", 4, 4) with { Cost = 1 }, Whole("large", 12, 4) with { Cost = 100 }];
        var problem = new SheetProblem(TwoStages, sheets, [Piece("A", Length.Inches(4), Length.Inches(4), 6)], SheetGoal.FewestSheets);

        var plan = Cut(problem, Little);

        Assert.Equal((2, (Rational)2, ProofStatus.Proved), (plan.Figures.Sheets, plan.Proof.Bound!.Value, plan.Proof.Status));
        Assert.Equal(6, Cut(problem with { Goal = SheetGoal.Cost }, Little).Figures.Sheets);
    }

    [Fact]
    public void A_piece_is_cut_from_its_own_cloth_only()
    {
        ImmutableArray<StockSheet> sheets = [Whole("red", 10, 10), Whole("blue", 10, 10)];
        var piece = Piece("A", Length.Inches(5), Length.Inches(5), 3) with { Sheets = [sheets[1].Id] };
        var other = Piece("B", Length.Inches(5), Length.Inches(5), 3);

        var plan = Cut(new(TwoStages, sheets, [piece, other], SheetGoal.FewestSheets), Little);

        Assert.Equal(2, plan.Figures.Sheets);
        Assert.All(
            plan.Cuts.Where(cut => cut.Strips.SelectMany(s => s.SubCuts).SelectMany(s => s.Stack).Any(p => p.Piece == piece.Piece)),
            cut => Assert.Equal(sheets[1].Id, cut.Sheet)
        );
    }

    /// <summary>A stage more, a turn more or a fold more never costs more cloth, and all lengths ten times is ten times the length.</summary>
    [Fact]
    public void Freedom_never_costs_cloth_on_a_roll() =>
        Gen.Int[1, 12]
            .Select(Gen.Int[1, 8], Gen.Int[1, 9])
            .Array[2, 3]
            .Sample(
                sizes =>
                {
                    Rational Length(SheetTerms terms, bool turn = false, int times = 1) =>
                        Cut(
                            new(
                                terms,
                                [new(new("sheet/roll"), "roll", Measure.Length.Inches(20 * times), null, null, 1)],
                                [.. sizes.Select((s, i) => Piece($"P{i}", Measure.Length.Inches(s.Item1 * times), Measure.Length.Inches(s.Item2 * times), s.Item3, turn))],
                                SheetGoal.Cost
                            ),
                            VeryLittle
                        ).Cost;

                    var two = Length(TwoStages);
                    Assert.True(Length(TwoStages with { Stages = 3 }) <= two);
                    Assert.True(Length(TwoStages, turn: true) <= two);
                    Assert.True(Length(TwoStages with { Folds = [1, 2] }) <= two);
                    Assert.True(Length(TwoStages with { Last = LastCut.Exact }) >= two);
                    Assert.Equal(two * 10, Length(TwoStages, times: 10));
                },
                iter: 12,
                threads: 1
            );

    [Fact]
    public void Equal_limits_of_work_give_equal_plans()
    {
        var problem = FatQuarters(9, Piece("A", Length.Inches(3, 1, 2), Length.Inches(5), 31), Piece("B", Length.Inches(2, 7, 8), Length.Inches(4, 1, 4), 44));
        var terms = problem with { Terms = SheetTerms.Usual };

        var (first, second) = (Cut(terms, Little), Cut(terms, Little));

        Assert.Equal(first.Proof.Work, second.Proof.Work);
        Assert.Equal(Text(first), Text(second));
    }

    [Fact]
    public void A_cancelled_search_answers_with_what_it_has()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        var plan = SheetCutter.Cut(FatQuarters(null, Piece("A", Length.Inches(3), Length.Inches(5), 500)), WorkBudget.Thorough, 0, cancel.Token).Value!;

        Assert.Empty(plan.Short);
        Assert.Equal("cancel", plan.Proof.StoppedBy);
        Assert.Empty(SheetChecker.Check(plan));
    }

    [Fact]
    public void Thousands_of_kinds_and_a_million_pieces_are_answered()
    {
        var many = FatQuarters(null, [.. Enumerable.Range(0, 3000).Select(i => Piece($"P{i}", Length.Inches(new(1 + (i % 70), 4)), Length.Inches(new(1 + (i / 70), 4)), 300))]);

        Assert.Empty(Cut(many, Little).Short);
    }

    /// <summary>
    /// Published bins (three stages, homogeneous, first cut down the height) and stock sizes (two stages with trimming):
    /// never more than one bin, or 0.2 %, above the best known, and never a bound above it.
    /// </summary>
    [Theory]
    [InlineData("alvarez2002/ATP36", 8)]
    [InlineData("alvarez2002/ATP44", 9)]
    [InlineData("alvarez2002/ATP49", 5)]
    [InlineData("cintra2008/gcut1d.txt", 14_871_875)]
    [InlineData("cintra2008/gcut5d.txt", 41_697_500)]
    public void Published_instances(string instance, long bestKnown)
    {
        var folder = Path.Combine(Root(), "..", "shared", "checks", "cutting", "twodim");
        Assert.SkipUnless(Directory.Exists(folder), "skipped: data absent");
        var bins = instance.StartsWith("alvarez", StringComparison.Ordinal);
        var terms = bins ? SheetTerms.Usual with { First = FirstCut.Along, Last = LastCut.Homogeneous } : TwoStages;
        Length Inches(string text) => Length.Inches(int.Parse(text, CultureInfo.InvariantCulture));
        var sheets = Rows(folder, instance + "_bins.csv")
            .Select(r => new StockSheet(new($"sheet/{r[0]}"), r[0], Inches(r[1]), Inches(r[2]), null, bins ? 1 : int.Parse(r[3], CultureInfo.InvariantCulture)));
        var demand = Rows(folder, instance + "_items.csv").Select(r => Piece(r[0], Inches(r[1]), Inches(r[2]), int.Parse(r[^1], CultureInfo.InvariantCulture)));

        var plan = Cut(new(terms, [.. sheets], [.. demand], SheetGoal.Cost), Little with { Steps = 3_000_000_000 });

        Assert.Empty(plan.Short);
        Assert.True(plan.Cost <= (bins ? bestKnown + 1 : bestKnown * new Rational(1002, 1000)), $"{plan.Cost}");
        Assert.True(plan.Proof.Bound <= bestKnown);
    }

    private static IEnumerable<string[]> Rows(string folder, string file) => File.ReadAllLines(Path.Combine(folder, file)).Skip(1).Select(l => l.Split(','));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent!;
        }

        return folder.FullName;
    }

    private static string Text(SheetPlan plan) => System.Text.Json.JsonSerializer.Serialize(plan.Cuts, PlanJson.Options);

    /// <summary>Every plan is checked.</summary>
    private static SheetPlan Cut(SheetProblem problem, WorkBudget budget)
    {
        var plan = SheetCutter.Cut(problem, budget).Value!;
        Assert.Empty(SheetChecker.Check(plan).Select(f => f.Rule));
        return plan;
    }

    private static SheetProblem FatQuarters(int? count, params ImmutableArray<SheetDemand> demand) =>
        new(TwoStages, [Sheet("quarter", Length.Inches(22), Length.Inches(18), count)], demand, SheetGoal.Cost);

    private static StockSheet Whole(string label, int width, int height) => Sheet(label, Length.Inches(width), Length.Inches(height), null);

    private static StockSheet Sheet(string label, Length width, Length height, int? count) =>
        new(new($"sheet/{label}"), label, width, height, count, width.InInches * height.InInches);

    private static SheetDemand Piece(string label, Length width, Length height, int count, bool mayTurn = false) =>
        new(new($"piece/{label}"), label, width, height, count, mayTurn, []);
}
