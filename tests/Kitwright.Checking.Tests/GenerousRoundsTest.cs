using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Cutting;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Rounds that are cut generous and trimmed: the checker sews and trims them, and finds what is wrong.</summary>
public sealed class GenerousRoundsTest
{
    private static QuiltPlan Plan(string block, string? technique, LengthUnit units = LengthUnit.Inch)
    {
        var drawn = BlockBook.Find(block)!;
        var metric = units == LengthUnit.Centimeter;
        var quilt = new Quilt(
            drawn.Name,
            null,
            units,
            metric ? Length.Millimeters(new(15, 2)) : Length.Inches(0, 1, 4),
            metric ? Length.Millimeters(5) : Length.Inches(0, 1, 8),
            null,
            [.. drawn.Roles, new("binding", "binding", null), new("backing", "backing", null)],
            [drawn.At(metric ? Length.Millimeters(300) : Length.Inches(12))],
            new(SettingKind.Straight, 3, 2, [[new(block, 0, false), new(block, 1, false)]], null),
            [],
            new("binding", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("backing", Length.Inches(4), Length.Inches(0, 1, 2), null),
            technique is null ? ImmutableSortedDictionary<string, string>.Empty : ImmutableSortedDictionary<string, string>.Empty.Add("round", technique),
            []
        );
        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);
        Assert.Empty(planned.Findings);
        return planned.Value!;
    }

    private static int Trims(QuiltPlan plan) => plan.Sewing.Recipes.Sum(r => r.Runs * r.Verbs.OfType<Trim>().Count(t => t.Counted));

    [Theory]
    [InlineData("log-cabin", LengthUnit.Inch)]
    [InlineData("courthouse-steps", LengthUnit.Inch)]
    [InlineData("log-cabin-off-center", LengthUnit.Inch)]
    [InlineData("courthouse-steps", LengthUnit.Centimeter)]
    public void Trimmed_rounds_make_the_same_quilt(string block, LengthUnit units)
    {
        var exact = Plan(block, null, units);
        foreach (var (technique, times) in new[] { ("trimmed", 1), ("trimmed-wide", 2) })
        {
            var plan = Plan(block, technique, units);
            Assert.Empty(PlanChecker.Check(plan).Findings);
            Assert.True(Trims(plan) > Trims(exact));
            // Each log that goes round is wider by whole steps; what it is joined to and the lengths of logs are as before.
            var step = units == LengthUnit.Inch ? Length.Inches(0, 1, 8) : Length.Millimeters(5);
            foreach (var piece in plan.Pieces.Where(p => p.Why.Key == "why.round"))
            {
                Assert.Contains(exact.Pieces, p => p.Role == piece.Role && p.Width == piece.Width && p.Height + (step * times) == piece.Height);
            }

            Assert.Contains(plan.Pieces, p => p.Why.Key == "why.round");
        }
    }

    public static TheoryData<string, string> Wrong { get; } = new()
    {
        { "strips cut exact for a round that is trimmed", "check.sewing" },
        { "trimmed to more cloth than there is", "check.sewing.trim-too-small" },
        { "trim left out", "check.sewing.unit-size" },
        { "trim not counted, and more than a step off", "check.sewing.trim-uncounted" },
        { "trimmed a step too far", "check.sewing.unit-size" },
        { "rounds sewn in another order", "check.sewing" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_round_is_refused(string name, string rule)
    {
        var plan = Plan("courthouse-steps", "trimmed-wide");
        var recipe = plan.Sewing.Recipes.First(r => r.Verbs.OfType<Trim>().Any(t => t.Counted) && r.Shows is null);
        var (id, trim) = (recipe.Id.Value, recipe.Verbs.Length - 1);
        var piece = plan.Pieces.Single(p => p.Id == recipe.Verbs.OfType<Take>().Last().Piece);
        var wide = Length.Inches(0, 1, 4);
        var changed = name switch
        {
            "strips cut exact for a round that is trimmed" => plan.Resize(piece.Label, Length.Zero, -(wide + Length.Inches(0, 1, 8))),
            "trimmed to more cloth than there is" => plan.EditVerb<Trim>(id, trim + 1, t => t with { Rectangle = Changed(t.Rectangle, Length.Inches(0, 3, 8)) }),
            "trim left out" => plan.DropVerb(id, trim + 1),
            "trim not counted, and more than a step off" => plan.EditVerb<Trim>(id, trim + 1, t => t with { Counted = false }),
            "trimmed a step too far" => plan.EditVerb<Trim>(id, trim + 1, t => t with { Rectangle = Changed(t.Rectangle, -Length.Inches(0, 1, 8)) }),
            _ => plan.EditVerb<Use>(plan.Sewing.Recipes.First(r => r.Verbs.OfType<Use>().Any(u => u.Unit == recipe.Id)).Id.Value, UseAt(plan, recipe.Id) + 1, u => u with { Unit = plan.Sewing.Recipes.First().Id }),
        };
        Assert.Contains(PlanChecker.Check(changed).Findings, f => f.Rule.StartsWith(rule, StringComparison.Ordinal));
    }

    private static int UseAt(QuiltPlan plan, PathId unit)
    {
        var user = plan.Sewing.Recipes.First(r => r.Verbs.OfType<Use>().Any(u => u.Unit == unit));
        return user.Verbs.Select((verb, i) => (verb, i)).First(x => x.verb is Use use && use.Unit == unit).i;
    }

    /// <summary>Larger, or smaller, each way.</summary>
    private static Polygon Changed(Polygon rectangle, Length by)
    {
        var (low, high) = rectangle.Bounds();
        return Polygon.Rectangle(low.X, low.Y, high.X + (Surd)by, high.Y + (Surd)by);
    }
}
