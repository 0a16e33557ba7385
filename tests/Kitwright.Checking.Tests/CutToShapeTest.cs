using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Sewing;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Patches of any convex shape are cut and sewn, and a shape with a hand is told from its mirror image.</summary>
public sealed class CutToShapeTest
{
    /// <summary>Half-rectangle triangles, a parallelogram between two triangles, and a trapezoid: by straight seams.</summary>
    [Theory]
    [InlineData("a 0,0 4,0 4,8|b 0,0 4,8 0,8", true)]
    [InlineData("a 0,0 4,0 8,8 4,8|b 4,0 8,0 8,8|c 0,0 4,8 0,8", true)]
    [InlineData("a 0,0 8,0 6,4 2,4|b 0,0 2,4 0,4|b 8,0 8,4 6,4|c 0,4 8,4 8,8 0,8", true)]
    [InlineData("a 0,0 3,0 8,5 8,8 5,8 0,3|b 3,0 8,0 8,5|c 0,3 5,8 0,8", false)]
    [InlineData("a 0,0 2,0 2,8|b 0,0 2,8 0,8|c 2,0 8,0 8,8 2,8", true)]
    [InlineData("a 0,0 1,0 1,8|b 0,0 1,8 0,8|c 1,0 8,0 8,8 1,8", true)]
    [InlineData("a 3,0 5,0 4,8|b 0,0 3,0 4,8 0,8|c 5,0 8,0 8,8 4,8", true)]
    public void It_comes_out_either_way_round(string patches, bool handed)
    {
        foreach (var mirror in new[] { false, true })
        {
            var planned = QuiltPlanner.Plan(Quilt(patches, mirror), null, [], PlanOptions.Usual, FirstFit.Plan);

            Assert.Empty(planned.Findings);
            Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
            Assert.Equal(handed, planned.Value!.Sewing.Recipes.Any(r => r.Kind == "cut-to-shape-handed"));
        }
    }

    /// <summary>The mirror image of a handed patch is another unit, never the same one turned.</summary>
    [Fact]
    public void A_mirror_image_is_another_unit()
    {
        var plan = QuiltPlanner.Plan(Quilt("a 0,0 2,0 4,4 2,4|b 2,0 4,0 4,4|b 0,0 2,4 0,4|a 8,0 6,0 4,4 6,4|c 6,0 4,0 4,4|c 8,0 6,4 8,4|d 0,4 8,4 8,8 0,8", false), null, [], PlanOptions.Usual, FirstFit.Plan).Value!;

        Assert.Empty(PlanChecker.Check(plan).Findings);
        Assert.Equal(2, plan.Sewing.Recipes.Count(r => r.Kind == "cut-to-shape-handed" && r.Outline!.Corners.Length == 4));
    }

    private const string TwoParallelograms = "a 0,0 2,0 4,4 2,4|b 2,0 4,0 4,4|b 0,0 2,4 0,4|a 8,0 6,0 4,4 6,4|c 6,0 4,0 4,4|c 8,0 6,4 8,4|d 0,4 8,4 8,8 0,8";

    /// <summary>Two parallelograms of one fabric that are each other's mirror images, and triangles whose images are of another fabric.</summary>
    [Fact]
    public void The_cut_list_says_which_hand_and_which_is_the_mirror_image()
    {
        var plan = Planned(TwoParallelograms, false);
        var handed = plan.Pieces.Where(p => p.Role == "a").ToArray();

        Assert.Equal([Hand.Left, Hand.Right], handed.Select(p => p.Hand).Order());
        Assert.Equal([handed[1].Id, handed[0].Id], handed.Select(p => p.Mirror!.Value));
        Assert.All(plan.Pieces.Where(p => p.Role is "b" or "c"), p => Assert.True(p.Hand != Hand.Either && p.Mirror is null));
        Assert.All(plan.Pieces.Where(p => p.Role == "d"), p => Assert.Equal(Hand.Either, p.Hand));
        Assert.Equal(
            "This shape has a hand, and A2 becomes its mirror image: lay the two wrong sides together, or fold the cloth so, and each cut gives one of each. Cut 4 pairs so.",
            Words.Catalog.English.Say(HandWords.Of(plan, plan.Pieces.First(p => p.Label == "A1"))!)
        );

        // In the mirror every hand is the other one.
        var mirrored = Planned(TwoParallelograms, true);
        Assert.Equal(
            plan.Pieces.Where(p => p.Role == "b").Select(p => p.Hand == Hand.Left ? Hand.Right : Hand.Left),
            mirrored.Pieces.Where(p => p.Role == "b").Select(p => p.Hand)
        );
    }

    /// <summary>Cloth without a wrong side is turned over: one class for both hands, which one-sided cloth must not have.</summary>
    [Fact]
    public void Two_sided_cloth_has_one_class_for_both_hands()
    {
        var quilt = Quilt(TwoParallelograms, false);
        var plans = new[] { false, true }.Select(twoSided => Dyed(quilt, twoSided)).ToArray();

        Assert.All(plans, plan => Assert.Empty(PlanChecker.Check(plan).Findings));
        Assert.Equal([2, 1], plans.Select(plan => plan.Pieces.Count(p => p.Role == "a")));
        Assert.Equal(plans[0].Pieces.Where(p => p.Role == "a").Sum(p => p.Count), plans[1].Pieces.Single(p => p.Role == "a").Count);
        Assert.All(plans[1].Pieces, p => Assert.True(p is { Hand: Hand.Either, Mirror: null }));
        Assert.StartsWith("The cloth has no wrong side", Words.Catalog.English.Say(HandWords.Of(plans[1], plans[1].Pieces.Single(p => p.Role == "a"))!), StringComparison.Ordinal);
        Assert.Null(HandWords.Of(plans[1], plans[1].Pieces.First(p => p.Role == "d")));

        var oneSided = plans[1] with { Fabrics = [.. plans[1].Fabrics.Select(f => f with { TwoSided = false })] };
        Assert.Contains("check.pieces.hand", PlanChecker.Check(oneSided).Findings.Select(f => f.Rule));
    }

    private static QuiltPlan Dyed(Quilt quilt, bool twoSided)
    {
        var colorway = new Colorway("Dyed", quilt.Roles.ToImmutableSortedDictionary(role => role.Id, role => role.Id.ToUpperInvariant()));
        ImmutableArray<Fabrics.Fabric> fabrics =
        [
            .. quilt.Roles.Select(role => new Fabrics.Fabric(role.Id.ToUpperInvariant(), role.Name, Length.Inches(42), 1200, "#335577", new(Fabrics.PrintKind.Solid, "#335577", 1))
            {
                TwoSided = twoSided,
            }),
        ];
        return QuiltPlanner.Plan(quilt, colorway, fabrics, PlanOptions.Usual, FirstFit.Plan).Value!;
    }

    /// <summary>Each slip that would have pieces cut wrong side up is refused.</summary>
    [Theory]
    [InlineData("none", "check.pieces.hand")]
    [InlineData("other", "check.pieces.hand")]
    [InlineData("square", "check.pieces.hand")]
    [InlineData("lost", "check.pieces.mirror")]
    [InlineData("self", "check.pieces.mirror")]
    [InlineData("taken", "check.pieces.hand")]
    public void A_wrong_hand_is_refused(string slip, string rule)
    {
        var plan = Planned(TwoParallelograms, false);
        var (a, square) = (plan.Pieces.First(p => p.Role == "a"), plan.Pieces.First(p => p.Role == "d"));
        var mutant = slip switch
        {
            "none" => With(a, a with { Hand = Hand.Either }),
            "other" => With(a, a with { Hand = a.Hand == Hand.Left ? Hand.Right : Hand.Left }),
            "square" => With(square, square with { Hand = Hand.Left }),
            "lost" => With(a, a with { Mirror = null }),
            "self" => With(a, a with { Mirror = a.Id }),
            // The unit of the other hand is cut from this one's pieces, so that one class gets two hands.
            _ => plan with
            {
                Sewing = new(
                    [.. plan.Sewing.Recipes.Select(r => r with { Verbs = [.. r.Verbs.Select(v => v is Take take && take.Piece == a.Mirror ? take with { Piece = a.Id } : v)] })]
                ),
            },
        };

        var findings = PlanChecker.Check(mutant).Findings;
        Assert.Contains(rule, findings.Select(f => f.Rule));
        Assert.All(findings, Mutants.InWords);

        QuiltPlan With(CutPiece piece, CutPiece other) => plan with { Pieces = plan.Pieces.Replace(piece, other) };
    }

    private static QuiltPlan Planned(string patches, bool mirror)
    {
        var plan = QuiltPlanner.Plan(Quilt(patches, mirror), null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        Assert.Empty(PlanChecker.Check(plan).Findings);
        return plan;
    }

    private static Quilt Quilt(string patches, bool mirror)
    {
        var read = QuiltFile.Read("""
            {"format": "kitwright-quilt", "version": 1, "name": "Shapes", "units": "inch",
             "roles": [{"id": "a", "name": "a"}, {"id": "b", "name": "b"}, {"id": "c", "name": "c"}, {"id": "d", "name": "d"}, {"id": "backing", "name": "backing"}],
             "blocks": [{"id": "one", "name": "One", "width": "8 in", "height": "8 in", "grid": {"columns": 8, "rows": 8}, "patches": [{"id": "1", "role": "a", "corners": [["0","0"],["8","0"],["8","8"],["0","8"]]}]}],
             "setting": {"kind": "straight", "columns": 2, "rows": 2, "cells": [[{"block": "one"}]]},
             "binding": {"role": "d", "stripWidth": "2 1/2 in", "allowance": "10 in"},
             "backing": {"role": "backing", "overhang": "4 in", "seam": "1/2 in"}}
            """).Value!;
        var width = patches.Contains("8,", StringComparison.Ordinal) ? 8 : 4;
        var block = read.Blocks[0] with { Width = Length.Inches(width), Patches = [.. patches.Split('|').Select((text, i) => Patch(text, i, width, mirror))] };
        return read with { Blocks = [block] };
    }

    private static BlockPatch Patch(string text, int index, int width, bool mirror)
    {
        var parts = text.Split(' ');
        var shape = new Polygon(
            [
                .. parts
                    .Skip(1)
                    .Select(c => Array.ConvertAll(c.Split(','), n => int.Parse(n, System.Globalization.CultureInfo.InvariantCulture)))
                    .Select(c => new Point(mirror ? width - c[0] : c[0], c[1])),
            ]
        );
        return new($"{index + 1}", parts[0], shape.CounterClockwise().Corners, []);
    }
}
