using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Tests.Pressing;
using Xunit;

namespace Kitwright.Tests.Sewing;

/// <summary>Published log cabins sewn by the plan: what is cut, and how large the unit is log by log.</summary>
public sealed class PublishedRoundsTest
{
    private static QuiltPlan Plan(BookBlock block, Rational side)
    {
        var quilt = BookQuilt.Of("log-cabin", 1, 1) with
        {
            Roles = [.. block.Roles, new("binding", "binding", null), new("backing", "backing", null)],
            Blocks = [block.At(Length.Inches(side))],
            Setting = new(SettingKind.Straight, 1, 1, [[new(block.Id, 0, false)]], null),
        };
        return QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
    }

    private static BookBlock Cabin(LogLay lay, Rational center, Rational log, int rounds) =>
        LogCabin.Draw("cabin", "cabin", null, new(lay, center, log, log, rounds, LogSide.Right, false, rounds, false, []));

    /// <summary>The longer and the shorter side of every unit on the way, in the order of sewing.</summary>
    private static (Length, Length)[] Units(QuiltPlan plan) =>
        [.. plan.Sewing.Recipes.Where(r => r.Shows != Recipe.WholeTop).Select(r => (Length.Max(r.Width, r.Height), Length.Min(r.Width, r.Height)))];

    private static Length In(int halves) => Length.Inches(0, halves, 2);

    /// <summary>[QWV]: center 4 1/2 in cut, strips 2 1/2 in: 2 × 4½, 2 × 8½, 2 × 8½, 2 × 12½; the block is 12 in finished.</summary>
    [Fact]
    public void Courthouse_steps_of_twelve_inches()
    {
        var plan = Plan(Cabin(LogLay.CourthouseSteps, 4, 2, 2), 12);
        Assert.Equal([(In(17), In(9)), (In(17), In(17)), (In(25), In(17)), (In(25), In(25))], Units(plan));
        var logs = plan.Pieces.Where(p => p.Height == In(5) && p.Role != "binding").SelectMany(p => Enumerable.Repeat(p.Width, p.Count)).Order();
        Assert.Equal(new[] { 9, 9, 17, 17, 17, 17, 25, 25 }.Select(In), logs);
    }

    /// <summary>[APQ-LC]: center and strips 1 1/2 in cut, 20 logs from 1½ to 11½ in; each makes the unit 1 in larger one way, to 11 in finished.</summary>
    [Fact]
    public void A_log_cabin_of_eleven_inches()
    {
        var plan = Plan(Cabin(LogLay.Round, 1, 1, 5), 11);
        var units = Units(plan);
        // Unfinished: each log in turn lengthens the shorter side, from 2½ × 1½ to 11½ × 11½ in.
        Assert.Equal(Enumerable.Range(1, 20).Select(log => (In(3 + (2 * ((log + 1) / 2))), In(3 + (2 * (log / 2))))), units);
        var logs = plan.Pieces.Where(p => p.Height == In(3)).SelectMany(p => Enumerable.Repeat(p.Width, p.Count)).Order().ToArray();
        // The center is the 21st piece, as large as the first log.
        Assert.Equal(new[] { 3, 3, 5, 5, 7, 7, 9, 9, 11, 11, 13, 13, 15, 15, 17, 17, 19, 19, 21, 21, 23 }.Select(In), logs);
    }
}
