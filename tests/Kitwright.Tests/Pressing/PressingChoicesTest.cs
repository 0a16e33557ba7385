using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Pressing;

/// <summary>Each habit of pressing that a quilt may overrule shows in its seams, and is kept in its file.</summary>
public sealed class PressingChoicesTest
{
    private static Quilt With(Quilt quilt, string habit, string way) =>
        quilt with
        {
            Pressing = ImmutableSortedDictionary<string, string>.Empty.Add(habit, way),
        };

    private static PressToward[] Directions(QuiltPlan plan, Func<Recipe, bool> of) =>
        [.. plan.Sewing.Recipes.Where(of).SelectMany(r => r.Verbs).Select(v => v switch { Press p => (PressToward?)p.Toward, SewIn s => s.Toward, _ => null }).OfType<PressToward>()];

    private static readonly Sashing Sashing = new(Length.Inches(2), "frame", "frame", true);

    public static TheoryData<string, string, string, bool> Choices { get; } = new()
    {
        { "log-cabin", "logs", "center", false },
        { "snowball", "sashing", "blocks", true },
        { "four-patch", "four-patch", "spun", false },
        { "eight-pointed-star", "set-in", "swirled", false },
        { "eight-pointed-star", "set-in", "open", false },
    };

    [Theory]
    [MemberData(nameof(Choices))]
    public void A_choice_shows_in_the_seams(string block, string habit, string way, bool sashed)
    {
        var quilt = BookQuilt.Of(block, 3, 3, sashed ? Sashing : null);
        var usual = BookQuilt.Plan(quilt)!;
        var chosen = BookQuilt.Plan(With(quilt, habit, way))!;
        Assert.True(PressingBook.Choice(habit)!.IsIn(usual.Sewing));
        Assert.NotEqual(Directions(usual, _ => true), Directions(chosen, _ => true));
    }

    /// <summary>Logs pressed toward the center lie under the part that grows ([SUNS]).</summary>
    [Fact]
    public void Logs_can_be_pressed_toward_the_center()
    {
        var plan = BookQuilt.Plan(With(BookQuilt.Of("courthouse-steps", 1, 1), "logs", "center"))!;
        var logs = 0;
        foreach (var recipe in plan.Sewing.Recipes)
        {
            foreach (var (seam, sides) in SeamTrace.Of(plan).Of(recipe.Id).Sides.Where(s => s.Value.Bottom.Patches == 1 != (s.Value.Top.Patches == 1)))
            {
                logs++;
                Assert.Equal(sides.Top.Patches == 1 ? PressToward.Bottom : PressToward.Top, ((Press)recipe.Verbs[seam.Verb]).Toward);
            }
        }

        Assert.True(logs >= 6);
    }

    /// <summary>Spun, each four-patch turns one way round its middle, so that equal ones side by side nest unturned (common practice, no source).</summary>
    [Fact]
    public void Spun_four_patches_nest_side_by_side()
    {
        var quilt = BookQuilt.Of("four-patch", 4, 4);
        var plan = BookQuilt.Plan(quilt with { Pressing = ImmutableSortedDictionary<string, string>.Empty.Add("four-patch", "spun").Add("alike", "open") })!;
        var trace = SeamTrace.Of(plan);
        var report = PressingReport.Of(plan, trace);
        Assert.Equal(report.Crossings, report.Nested);
        var halves = trace.Units.Values.Where(u => !u.Swirled.IsEmpty).ToArray();
        Assert.NotEmpty(halves);
        // The halves lie on opposite sides of one line.
        Assert.All(halves, unit => Assert.True(Spot.Dot(unit.Swirled[0].TowardTop, unit.Swirled[1].TowardTop) < -0.99));
    }

    /// <summary>Where nothing that meets decides, a flipped corner goes the way that was chosen.</summary>
    [Fact]
    public void Flipped_corners_can_be_pressed_back()
    {
        var sides = new SeamSides(new(1, false, 50, 0), new(1, false, 50, 0));
        var chosen = PressingRules.Of(ImmutableSortedDictionary<string, string>.Empty.Add("geese", "goose"));
        Assert.True(PressingRules.Usual.TowardTop("goose-flip", sides) > 0);
        Assert.True(chosen.TowardTop("goose-flip", sides) < 0);
    }

    [Fact]
    public void The_file_keeps_the_choice()
    {
        var quilt = With(BookQuilt.Of("log-cabin", 1, 1), "logs", "center");
        var read = QuiltFile.Read(QuiltFile.Write(quilt));
        Assert.Equal(quilt.Pressing, read.Value!.Pressing);
        Assert.Null(QuiltFile.Read(QuiltFile.Write(quilt with { Pressing = null })).Value!.Pressing);
    }

    [Theory]
    [InlineData("logs", "sideways")]
    [InlineData("sleeves", "open")]
    public void What_is_in_no_book_is_a_note(string habit, string way)
    {
        var planned = Kitwright.Piecing.QuiltPlanner.Plan(With(BookQuilt.Of("log-cabin", 1, 1), habit, way), null, [], Kitwright.Piecing.PlanOptions.Usual, Kitwright.Cutting.FirstFit.Plan);
        Assert.Contains(planned.Findings, f => f.Rule == "pressing.unknown" && f.Place == $"/pressing/{habit}");
        Assert.NotNull(planned.Value);
    }
}
