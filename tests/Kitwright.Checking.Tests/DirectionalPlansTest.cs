using System.Collections.Immutable;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Prints that have an up: planned with all fabrics directional, sewn by the checker, and refused where a piece is turned.</summary>
public sealed class DirectionalPlansTest
{
    private const int Step = 6;

    public static TheoryData<PrintDirection, PrintSetting, int> Ways() =>
        new()
        {
            { PrintDirection.OneWay, PrintSetting.InTheQuilt, 0 },
            { PrintDirection.TwoWay, PrintSetting.InTheQuilt, 1 },
            { PrintDirection.OneWay, PrintSetting.WithTheBlock, 2 },
        };

    /// <summary>Every sixth block of the book for each way, each block laid in all four turns.</summary>
    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_print_stands_upright_in_every_block(PrintDirection direction, PrintSetting setting, int from)
    {
        var blocks = BlockBook.All.Where(block => !block.Patches.Any(p => !p.Arcs.IsEmpty)).Where((_, i) => i % Step == from).ToArray();
        Assert.NotEmpty(blocks);
        Assert.All(blocks, block => Comes(Turned(Of(block)), direction, setting));
    }

    /// <summary>Prints of all kinds beside one another, techniques, turns and mirror images by dice; every eighth block of the book.</summary>
    [Fact]
    public void Prints_of_all_kinds_may_lie_beside_one_another()
    {
        var dice = new Random(8);
        foreach (var block in BlockBook.All.Where(block => !block.Patches.Any(p => !p.Arcs.IsEmpty)).Where((_, i) => i % 8 == 3))
        {
            var quilt = Turned(Of(block));
            quilt = quilt with
            {
                Prints = (PrintSetting)dice.Next(2),
                Techniques = TechniqueBook.Kinds.ToImmutableSortedDictionary(kind => kind.Name, kind => kind.Techniques[dice.Next(kind.Techniques.Length)].Name, StringComparer.Ordinal),
                Setting = quilt.Setting with { Cells = [.. quilt.Setting.Cells.Select(row => row.Select(cell => cell with { Mirror = dice.Next(3) == 0 }).ToImmutableArray())] },
            };
            ImmutableArray<Fabric> shelf = [.. Shelf(quilt, PrintDirection.Any).Select(fabric => fabric with { Direction = (PrintDirection)dice.Next(3) })];
            var planned = QuiltPlanner.Plan(quilt, Colorway(quilt), shelf, PlanOptions.Usual with { OneLengthPerFabric = true }, FirstFit.Plan);
            Assert.True(planned.Value is not null, $"{quilt.Name}: {string.Join("; ", planned.Findings.Take(3).Select(f => $"{f.Rule} {f.Place}"))}");
            var findings = PlanChecker.Check(planned.Value!).Findings;
            Assert.True(findings.IsEmpty, $"{quilt.Name}: {string.Join("; ", findings.Take(3).Select(f => $"{f.Rule} {f.Place}"))}");
        }
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_print_stands_upright_in_the_demo_quilts(PrintDirection direction, PrintSetting setting, int from)
    {
        _ = from;
        Assert.All(DemoQuilts.All(), quilt => Comes(quilt, direction, setting));
    }

    /// <summary>A technique that would turn a print gives way to one that keeps it, and the plan says so.</summary>
    [Theory]
    [InlineData("half-square", "two", true)]
    [InlineData("half-square", "eight-trimmed", true)]
    [InlineData("half-square", "one", false)]
    [InlineData("goose", "four", true)]
    [InlineData("goose", "flip", false)]
    [InlineData("square-in-square", "flip", false)]
    [InlineData("row", "strip-set", false)]
    public void A_technique_that_turns_a_print_gives_way(string kind, string technique, bool givesWay)
    {
        var quilts = DemoQuilts.All()
            .Concat(BlockBook.All.Where(block => !block.Patches.Any(p => !p.Arcs.IsEmpty)).Select(Of))
            .Where(quilt => TechniqueComparison.KindsIn(quilt).ContainsKey(kind))
            .Take(2)
            .ToArray();
        Assert.NotEmpty(quilts);
        Assert.All(
            quilts,
            quilt =>
            {
                var notes = Comes(quilt with { Techniques = quilt.Techniques.SetItem(kind, technique) }, PrintDirection.OneWay, PrintSetting.InTheQuilt);
                Assert.Equal(givesWay, notes.Any(f => f.Rule == "piecing.print-technique" && f.Place == $"/techniques/{kind}"));
            }
        );
    }

    public static TheoryData<BorderStyle, StripGrain> Borders()
    {
        var borders = new TheoryData<BorderStyle, StripGrain>();
        foreach (var style in Enum.GetValues<BorderStyle>())
        {
            borders.Add(style, StripGrain.Crosswise);
            borders.Add(style, StripGrain.Lengthwise);
        }

        return borders;
    }

    [Theory]
    [MemberData(nameof(Borders))]
    public void Borders_stand_upright_on_all_four_sides(BorderStyle style, StripGrain grain)
    {
        var quilt = DemoQuilts.All().First(q => q.Borders.Any(b => b.Units is null));
        quilt = quilt with { Borders = [.. quilt.Borders.Select(b => b.Units is null ? b with { Style = style, Grain = grain, Corner = style == BorderStyle.CornerSquares ? b.Corner ?? b.Role : null } : b)] };
        var notes = Comes(quilt, PrintDirection.OneWay, PrintSetting.InTheQuilt);
        Assert.Equal(grain == StripGrain.Lengthwise, notes.Any(f => f.Rule == "piecing.print-border"));
    }

    /// <summary>On point the blocks stand on their corner with their sashes and cornerstones, and their prints with them.</summary>
    [Theory]
    [InlineData(false, false, PrintSetting.InTheQuilt)]
    [InlineData(true, false, PrintSetting.InTheQuilt)]
    [InlineData(true, true, PrintSetting.InTheQuilt)]
    [InlineData(true, true, PrintSetting.WithTheBlock)]
    public void Blocks_on_point_stand_upright_on_their_corner(bool outer, bool halved, PrintSetting setting)
    {
        var quilt = DemoQuilts.All().First(q => q.Setting.Kind == SettingKind.OnPoint);
        var block = quilt.Setting.Cells[0][0].Block;
        var role = quilt.Roles[0].Id;
        var sashed = quilt with
        {
            Setting = quilt.Setting with
            {
                Columns = 2,
                Rows = 2,
                Cells = [[new(block, 1, false), new(block, 0, false)], [new(block, 2, false), new(block, 3, false)]],
                Sashing = new(Length.Inches(1, 1, 2), role, quilt.Roles[1].Id, outer, halved),
            },
        };
        Comes(sashed, PrintDirection.OneWay, setting);
    }

    /// <summary>Two at a time turns every second unit half round, which a two-way print does not show.</summary>
    [Fact]
    public void A_two_way_print_may_be_turned_half_round()
    {
        var quilt = DemoQuilts.All().First(q => TechniqueComparison.KindsIn(q).ContainsKey("half-square"));
        var techniques = quilt.Techniques.SetItem("half-square", "two");
        Assert.DoesNotContain(Comes(quilt with { Techniques = techniques }, PrintDirection.TwoWay, PrintSetting.InTheQuilt), f => f.Rule == "piecing.print-technique");
    }

    [Fact]
    public void Sashes_that_stand_and_sashes_that_lie_are_cut_apart()
    {
        var quilt = DemoQuilts.All().First(q => q.Setting is { Kind: SettingKind.Straight, Sashing.Cornerstone: not null });
        var plan = Planned(quilt, PrintDirection.OneWay, PrintSetting.InTheQuilt).Plan;
        var any = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        var role = quilt.Setting.Sashing!.Role;
        Assert.True(plan.Pieces.Count(p => p.Role == role) > any.Pieces.Count(p => p.Role == role));
        Assert.Contains(plan.Pieces, p => p.Role == role && p.Width < p.Height && !p.MayTurn);
        Assert.Contains(plan.Pieces, p => p.Role == role && p.Width > p.Height && !p.MayTurn);
    }

    /// <summary>Fewer ways to lie can only cost cloth; in each quilt the bound over all fabrics shows it.</summary>
    [Fact]
    public void A_direction_never_lowers_the_bound_of_the_cloth()
    {
        foreach (var quilt in DemoQuilts.All())
        {
            // With techniques that every print allows, the pieces are the same and only their turning is not.
            var plain = quilt with { Techniques = ImmutableSortedDictionary<string, string>.Empty.Add("half-square", "one").Add("goose", "flip").Add("hourglass", "triangles").Add("square-in-square", "flip") };
            var any = QuiltPlanner.Plan(plain, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
            var oneWay = Planned(plain, PrintDirection.OneWay, PrintSetting.InTheQuilt).Plan;
            foreach (var cloth in any.Cloths)
            {
                var other = oneWay.Cloths.Single(c => c.Letter == cloth.Letter);
                var area = cloth.Demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width.InInches * d.Height.InInches * d.Count));
                var otherArea = other.Demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width.InInches * d.Height.InInches * d.Count));
                if (area == otherArea && cloth.Sections.IsEmpty && other.Sections.IsEmpty)
                {
                    Assert.True(other.Proof.Bound >= cloth.Proof.Bound, $"{quilt.Name} {cloth.Letter}");
                }
            }
        }
    }

    [Fact]
    public void A_plan_without_directions_is_as_it_was()
    {
        foreach (var quilt in DemoQuilts.All())
        {
            var colorway = Colorway(quilt);
            var without = QuiltPlanner.Plan(quilt, colorway, Shelf(quilt, PrintDirection.Any), PlanOptions.Usual, FirstFit.Plan).Value!;
            Assert.Equal(PlanHash.Of(quilt, colorway, PlanOptions.Usual, []), without.Hash);
            Assert.DoesNotContain("direction", PlanFile.Write(without), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_piece_that_is_turned_is_refused()
    {
        foreach (var quilt in DemoQuilts.All().OrderBy(q => q.Setting.Columns * q.Setting.Rows).Take(2))
        {
            var plan = Planned(quilt, PrintDirection.OneWay, PrintSetting.InTheQuilt).Plan;
            var refused = 0;
            foreach (var (recipe, index) in plan.Sewing.Recipes.Select((r, i) => (r, i)))
            {
                foreach (var (verb, at) in recipe.Verbs.Select((v, i) => (v, i)))
                {
                    if (refused < 4 && verb is Take take)
                    {
                        // The same rectangle of cloth on the same place, upside down.
                        var piece = plan.Pieces.Single(p => p.Id == take.Piece);
                        var upside = Motion.QuarterTurns(2).Then(Motion.Shift(piece.Width, piece.Height)).Then(take.Motion);
                        Assert.Contains(Rules(index, recipe, at, take with { Motion = upside }), rule => rule == "check.print.turned");
                        refused++;
                        if (piece.Width == piece.Height)
                        {
                            var quarter = Motion.QuarterTurns(1).Then(Motion.Shift(piece.Width, 0)).Then(take.Motion);
                            Assert.Contains(Rules(index, recipe, at, take with { Motion = quarter }), rule => rule == "check.print.turned");
                        }
                    }
                }
            }

            Assert.Equal(4, refused);

            IEnumerable<string> Rules(int index, Recipe recipe, int at, Verb mutant) =>
                PlanChecker.Check(plan with { Sewing = new(plan.Sewing.Recipes.SetItem(index, recipe with { Verbs = recipe.Verbs.SetItem(at, mutant) })) }).Findings.Select(f => f.Rule);
        }
    }

    [Fact]
    public void A_piece_that_may_be_turned_on_the_cloth_is_refused()
    {
        var plan = Planned(DemoQuilts.All().First(), PrintDirection.TwoWay, PrintSetting.InTheQuilt).Plan;
        var piece = plan.Pieces.First(p => p.Grain == CutGrain.Crosswise && p.Width != p.Height);
        var cloths = plan.Cloths.Select(c => c with { Demand = [.. c.Demand.Select(d => d.Piece == piece.Id ? d with { MayTurn = true } : d)] });
        var loose = plan with { Pieces = plan.Pieces.Replace(piece, piece with { MayTurn = true }), Cloths = [.. cloths] };
        Assert.Contains(PlanChecker.Check(loose).Findings, f => f.Rule == "check.print.may-turn");
    }

    [Fact]
    public void A_plan_whose_prints_go_with_the_block_is_refused_as_one_that_stands_in_the_quilt()
    {
        var quilt = Turned(Of(BlockBook.Find("nine-patch")!));
        var plan = Planned(quilt, PrintDirection.OneWay, PrintSetting.WithTheBlock).Plan;
        Assert.Contains(PlanChecker.Check(plan with { Prints = PrintSetting.InTheQuilt }).Findings, f => f.Rule == "check.print.turned");
    }

    private static ImmutableArray<Findings.Finding> Comes(Quilt quilt, PrintDirection direction, PrintSetting setting)
    {
        var (plan, notes) = Planned(quilt, direction, setting);
        var findings = PlanChecker.Check(plan).Findings;
        Assert.True(findings.IsEmpty, $"{quilt.Name}: {string.Join("; ", findings.Take(3).Select(f => $"{f.Rule} {f.Place}"))}");
        return notes;
    }

    private static (QuiltPlan Plan, ImmutableArray<Findings.Finding> Notes) Planned(Quilt quilt, PrintDirection direction, PrintSetting setting)
    {
        var planned = QuiltPlanner.Plan(quilt with { Prints = setting }, Colorway(quilt), Shelf(quilt, direction), PlanOptions.Usual, FirstFit.Plan);
        Assert.True(planned.Value is not null, $"{quilt.Name}: {string.Join("; ", planned.Findings.Take(3).Select(f => $"{f.Rule} {f.Place}"))}");
        Assert.All(planned.Findings, f => Assert.StartsWith("piecing.print-", f.Rule, StringComparison.Ordinal));
        return (planned.Value!, planned.Findings);
    }

    private static Colorway Colorway(Quilt quilt) => new("Up", quilt.Roles.ToImmutableSortedDictionary(r => r.Id, r => "F-" + r.Id, StringComparer.Ordinal));

    private static ImmutableArray<Fabric> Shelf(Quilt quilt, PrintDirection direction) =>
        [.. quilt.Roles.Select(r => new Fabric("F-" + r.Id, r.Name, Length.Inches(44), 1000, "#445566", new(PrintKind.LargeFloral, "#ffffff", 1)) { Direction = direction })];

    private static Quilt Of(BookBlock block) => (NewQuilt.With(block, LengthUnit.Inch) with { Columns = 2, Rows = 2 }).Make().Value!;

    /// <summary>Each block of four turned by another quarter, where it is square.</summary>
    private static Quilt Turned(Quilt quilt)
    {
        var block = quilt.Setting.Cells[0][0].Block;
        return quilt.Blocks.First(b => b.Id == block) is var drawn && drawn.Width != drawn.Height
            ? quilt
            : quilt with { Setting = quilt.Setting with { Cells = [[new(block, 0, false), new(block, 1, false)], [new(block, 2, false), new(block, 3, false)]] } };
    }
}
