using System.Collections.Immutable;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Pieces that are matched to a print's repeat; expected rooms are own arithmetic.</summary>
public sealed class MatchedPlansTest
{
    public static TheoryData<string, string> Repeats() =>
        new()
        {
            { "6", "8" },
            { "12 3/8", "" },
            { "", "5" },
            // More than half of the width: one piece a strip.
            { "24", "24" },
        };

    [Theory]
    [MemberData(nameof(Repeats))]
    public void Every_role_of_the_blocks_can_be_matched(string along, string across)
    {
        foreach (var quilt in DemoQuilts.All().Take(3))
        {
            foreach (var role in quilt.Blocks.SelectMany(b => b.Patches).Select(p => p.Role).Distinct().Take(1))
            {
                var plan = Planned(quilt, role, along, across).Value!;
                Assert.Empty(PlanChecker.Check(plan).Findings);
                var cloth = plan.Cloths.Single(c => c.Roles.Contains(role));
                Assert.Equal([role], cloth.Roles);
                Assert.All(cloth.Strips, strip => Assert.True(Parse(along) is not { } repeat || (strip.Height / repeat).IsInteger));
                Assert.True(cloth.Purchase >= QuiltPlanner.Plan(quilt, Colorway(quilt), Shelf(quilt, along, across), PlanOptions.Usual, FirstFit.Plan).Value!.Cloths.Single(c => c.Letter == cloth.Letter).Purchase);
            }
        }
    }

    /// <summary>A piece of 3 1/2 by 6 1/2 in takes 8 by 12 in of a print that repeats every 8 in across and 6 in along.</summary>
    [Fact]
    public void A_piece_is_cut_from_whole_repeats()
    {
        var plan = Planned(Stars(), "background", "6", "8").Value!;
        var cloth = plan.Cloths.Single(c => c.Roles.Contains("background"));
        var stands = plan.Pieces.Single(p => p.Role == "background" && p.Width == Length.Inches(3, 1, 2) && p.Height == Length.Inches(6, 1, 2));
        var room = cloth.Demand.Single(d => d.Piece == stands.Id);
        Assert.Equal((Length.Inches(8), Length.Inches(12)), (room.Width, room.Height));
        // 40 in less one repeat hold 4 rooms of 8 in: 60 pieces take 15 strips.
        Assert.Equal(15, cloth.Strips.Where(s => s.Height == Length.Inches(12)).Sum(s => s.Times));
        Assert.Equal((Length.Inches(6, 1, 2), Length.Inches(8)), (cloth.Terms.Straightening, cloth.Terms.CrossTrim));
    }

    [Fact]
    public void A_role_that_cannot_be_matched_is_said()
    {
        var quilt = Stars();
        Assert.Contains(Planned(quilt, "background", "", "").Findings, f => f is { Rule: "piecing.match-none", Weight: Weight.Note });
        var outer = Planned(quilt, "outer", "6", "8");
        Assert.Null(outer.Value);
        Assert.Contains(outer.Findings, f => f.Rule == "piecing.match-wide");
        var lengthwise = quilt with { Borders = [.. quilt.Borders.Select(b => b with { Grain = StripGrain.Lengthwise })] };
        Assert.Contains(Planned(lengthwise, "outer", "6", "").Findings, f => f.Rule == "piecing.match-lengthwise");
    }

    [Fact]
    public void A_strip_or_a_room_off_the_repeat_is_refused()
    {
        var plan = Planned(Stars(), "background", "6", "8").Value!;
        var at = plan.Cloths.ToList().FindIndex(c => c.Terms.Match is not null);
        var cloth = plan.Cloths[at];
        Assert.DoesNotContain(Rules(cloth), rule => rule.StartsWith("check.match", StringComparison.Ordinal));

        Assert.Contains("check.match.off", Rules(cloth with { Strips = cloth.Strips.SetItem(0, cloth.Strips[0] with { Height = cloth.Strips[0].Height + Length.Inch }) }));
        var sub = cloth.Strips[0].SubCuts[0];
        Assert.Contains("check.match.off", Rules(cloth with { Strips = cloth.Strips.SetItem(0, cloth.Strips[0] with { SubCuts = [sub with { Width = sub.Width - Length.Inch }, .. cloth.Strips[0].SubCuts[1..]] }) }));
        Assert.Contains("check.match.room", Rules(cloth with { Demand = [.. cloth.Demand.Select(d => d with { Width = Length.Inch })] }));
        Assert.Contains("check.match.room", Rules(cloth with { Demand = [.. cloth.Demand.Select(d => d with { MayTurn = true })] }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { Straightening = Length.Inch } }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { CrossTrim = Length.Zero } }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { Match = null } }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { Match = new() { Along = Length.Inches(3), Across = Length.Inches(4) } } }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { Table = new(2, 0, Length.Zero) } }));
        Assert.Contains("check.match.terms", Rules(cloth with { Terms = cloth.Terms with { Table = new(1, 8, Length.Inch) } }));

        IEnumerable<string> Rules(ClothPlan mutant) => PlanChecker.Check(plan with { Cloths = plan.Cloths.SetItem(at, mutant) }).Findings.Select(f => f.Rule);
    }

    private static Checked<QuiltPlan> Planned(Quilt quilt, string role, string along, string across) =>
        QuiltPlanner.Plan(
            quilt with { Roles = [.. quilt.Roles.Select(r => r with { Matched = r.Id == role })] },
            Colorway(quilt),
            Shelf(quilt, along, across),
            PlanOptions.Usual with { OneLengthPerFabric = true },
            FirstFit.Plan
        );

    private static Colorway Colorway(Quilt quilt) => new("One", quilt.Roles.ToImmutableSortedDictionary(r => r.Id, r => "F-" + r.Id, StringComparer.Ordinal));

    private static ImmutableArray<Fabric> Shelf(Quilt quilt, string along, string across) =>
        [
            .. quilt.Roles.Select(r => new Fabric("F-" + r.Id, r.Name, Length.Inches(44), 1000, "#445566", new(PrintKind.LargeFloral, "#ffffff", 1))
            {
                RepeatAlong = Parse(along),
                RepeatAcross = Parse(across),
            }),
        ];

    private static Length? Parse(string text) => LengthText.TryParse(text, out var length) ? length : null;

    private static Quilt Stars() => DemoQuilts.Named("ostrel-bay-stars");
}
