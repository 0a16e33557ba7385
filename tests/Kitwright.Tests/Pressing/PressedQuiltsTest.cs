using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Pressing;

/// <summary>Whole quilts of traditional blocks: which way their seams go.</summary>
public sealed class PressedQuiltsTest
{
    private static PressingReport Report(QuiltPlan plan) => PressingReport.Of(plan, SeamTrace.Of(plan));

    /// <summary>Neighboring rows are pressed in opposite directions so that seams nest ([QSOC5], [SNB]).</summary>
    [Theory]
    [InlineData("four-patch")]
    [InlineData("nine-patch")]
    [InlineData("shoofly")]
    [InlineData("friendship-star")]
    [InlineData("sawtooth-star")]
    public void All_crossings_nest_edge_to_edge(string block)
    {
        var report = Report(BookQuilt.Plan(BookQuilt.Of(block, 4, 4))!);
        Assert.True(report.Crossings > 4 * 4);
        Assert.Equal(report.Crossings, report.Nested);
    }

    /// <summary>Sashing with cornerstones: toward the sashing everywhere ([ODD], [KSS]), and every corner nests.</summary>
    [Fact]
    public void Blocks_are_pressed_toward_their_sashing()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("snowball", 3, 3, new(Length.Inches(2), "frame", "frame", true)))!;
        var trace = SeamTrace.Of(plan);
        Assert.Equal(Report(plan).Crossings, Report(plan).Nested);
        foreach (var recipe in plan.Sewing.Recipes)
        {
            foreach (var (seam, sides) in trace.Of(recipe.Id).Sides.Where(s => s.Value.Bottom.Blocks != s.Value.Top.Blocks))
            {
                Assert.Equal(sides.Bottom.Blocks ? PressToward.Top : PressToward.Bottom, ((Press)recipe.Verbs[seam.Verb]).Toward);
            }
        }
    }

    /// <summary>Log cabins are pressed away from the center ([APQ-LC], [RRQ], [LBQ]).</summary>
    [Theory]
    [InlineData("log-cabin")]
    [InlineData("courthouse-steps")]
    public void Logs_are_pressed_away_from_the_center(string block)
    {
        var plan = BookQuilt.Plan(BookQuilt.Of(block, 1, 1))!;
        var logs = 0;
        foreach (var recipe in plan.Sewing.Recipes)
        {
            foreach (var (seam, sides) in SeamTrace.Of(plan).Of(recipe.Id).Sides.Where(s => s.Value.Bottom.Patches == 1 != (s.Value.Top.Patches == 1)))
            {
                logs++;
                Assert.Equal(sides.Top.Patches == 1 ? PressToward.Top : PressToward.Bottom, ((Press)recipe.Verbs[seam.Verb]).Toward);
            }
        }

        Assert.True(logs >= 6);
    }

    /// <summary>One quilter presses toward the center ([SUNS]): a habit is data, and can be turned round.</summary>
    [Fact]
    public void A_habit_can_be_turned_round()
    {
        var away = new SeamSides(new(5, false, 50, 2), new(1, false, 50, 0));
        var toward = PressingRules.Usual with { Weights = PressingRules.Usual.Weights.SetItem(PressingHabit.PlainParts, -200) };
        Assert.True(PressingRules.Usual.TowardTop("joined", away) > 0);
        Assert.True(toward.TowardTop("joined", away) < 0);
    }

    /// <summary>Pressed toward the darker fabric by default ([JAN], [AJP], [SIB]); eight seams of a pinwheel then nest of themselves.</summary>
    [Fact]
    public void A_pinwheel_of_equal_units_nests_at_its_center()
    {
        var report = Report(BookQuilt.Plan(BookQuilt.Of("pinwheel", 1, 1))!);
        Assert.True(report.Crossings >= 3);
        Assert.Equal(report.Crossings, report.Nested);
    }

    /// <summary>Whatever cannot nest lies open; two seams that meet never lie on the same side.</summary>
    [Fact]
    public void No_two_seams_of_any_block_of_the_book_lie_on_the_same_side()
    {
        var planned = 0;
        foreach (var block in BlockBook.All)
        {
            if (BookQuilt.Plan(BookQuilt.Of(block.Id, 3, 3)) is not { } plan)
            {
                continue;
            }

            planned++;
            var trace = SeamTrace.Of(plan);
            var toward = plan.Sewing.Recipes.ToDictionary(r => r.Id, r => r.Verbs);
            foreach (var crossing in trace.Units.Values.SelectMany(u => u.Crossings))
            {
                var one = ((Press)toward[crossing.One.Recipe][crossing.One.Verb]).Toward;
                var other = ((Press)toward[crossing.Other.Recipe][crossing.Other.Verb]).Toward;
                Assert.True(one == PressToward.Open || other == PressToward.Open || one == other == crossing.Alike, $"{block.Id}: {crossing}");
            }
        }

        Assert.True(planned > 40, $"{planned}");
    }
}
