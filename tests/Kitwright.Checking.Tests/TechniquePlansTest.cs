using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Every technique of the book makes its unit, in any pose and size: the checker sews it and finds the block.</summary>
public sealed class TechniquePlansTest
{
    public static TheoryData<string, string, string> Ways()
    {
        var ways = new TheoryData<string, string, string>();
        foreach (var kind in TechniqueBook.Kinds)
        {
            foreach (var technique in kind.Techniques)
            {
                foreach (var size in new[] { "1", "1 1/8", "1 1/2", "2 1/4", "3" })
                {
                    ways.Add(kind.Name, technique.Name, size);
                }
            }
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_technique_comes_out(string kind, string technique, string size)
    {
        Assert.True(LengthText.TryParse(size, out var unit));
        for (var turns = 0; turns < 4; turns++)
        {
            var planned = QuiltPlanner.Plan(Sampler(kind, technique, unit, turns), null, [], PlanOptions.Usual, FirstFit.Plan);

            Assert.Empty(planned.Findings);
            Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
        }
    }

    /// <summary>Each way shows in the recipes: a choice that changes nothing would be none.</summary>
    [Theory]
    [InlineData("half-square", "eight", "half-square-eight")]
    [InlineData("half-square", "one", "half-square-one")]
    [InlineData("half-square", "one-trimmed", "half-square-one")]
    [InlineData("half-square", "triangles", "half-square-triangle")]
    [InlineData("goose", "four", "goose-four")]
    [InlineData("goose", "triangles", "quarter-square-triangle")]
    [InlineData("hourglass", "triangles", "quarter-square-triangle")]
    [InlineData("square-in-square", "flip", "snowball")]
    [InlineData("goose", "flip-trimmed", "goose-flip")]
    [InlineData("goose", "four-trimmed", "goose-four")]
    [InlineData("square-in-square", "flip-trimmed", "snowball")]
    [InlineData("square-in-square", "triangles", "square-on-point")]
    [InlineData("row", "strip-set", "strip-set")]
    public void What_is_chosen_is_planned(string kind, string technique, string recipe)
    {
        var planned = QuiltPlanner.Plan(Sampler(kind, technique, Length.Inches(2), 0), null, [], PlanOptions.Usual, FirstFit.Plan);

        Assert.Contains(planned.Value!.Sewing.Recipes, r => r.Kind == recipe);
    }

    /// <summary>What the shop prefers is planned where the quilt has no choice of its own, and only there.</summary>
    [Fact]
    public void A_quilt_without_a_choice_follows_the_shop()
    {
        var shop = PlanOptions.Usual with { Techniques = PlanOptions.Usual.Techniques.Add("half-square", "eight").Add("goose", "four") };
        var planned = QuiltPlanner.Plan(Sampler("goose", "flip", Length.Inches(2), 0), null, [], shop, FirstFit.Plan);

        Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
        var kinds = planned.Value!.Sewing.Recipes.Select(r => r.Kind).ToArray();
        Assert.Contains("half-square-eight", kinds);
        Assert.DoesNotContain("half-square-two", kinds);
        Assert.Contains("goose-flip", kinds);
        Assert.DoesNotContain("goose-four", kinds);
    }

    /// <summary>What is in no book is said, and the usual way planned.</summary>
    [Fact]
    public void An_unknown_technique_is_a_note()
    {
        var planned = QuiltPlanner.Plan(Sampler("goose", "by-magic", Length.Inches(2), 0), null, [], PlanOptions.Usual, FirstFit.Plan);

        Assert.Equal("piecing.technique-unknown", Assert.Single(planned.Findings).Rule);
        Assert.Contains(planned.Value!.Sewing.Recipes, r => r.Kind == "goose-flip");
    }

    /// <summary>A block with one unit of each kind, made with patches on a grid of 4 by 4 units, in a quilt of 3 by 3.</summary>
    private static Quilt Sampler(string kind, string technique, Length unit, int turns)
    {
        string[] patches =
        [
            // A half-square unit, an hourglass, a square in a square and a row, two units each; a goose above a plain strip.
            "a 0,0 2,0 2,2", "b 0,0 2,2 0,2",
            "a 2,0 4,0 3,1", "b 4,0 4,2 3,1", "a 4,2 2,2 3,1", "b 2,2 2,0 3,1",
            "b 0,2 1,2 0,3", "b 1,2 2,2 2,3", "b 2,3 2,4 1,4", "b 1,4 0,4 0,3", "a 1,2 2,3 1,4 0,3",
            "a 2,2 4,2 3,3", "b 2,2 3,3 2,3", "b 4,2 4,3 3,3",
            "a 2,3 3,3 3,4 2,4", "b 3,3 4,3 4,4 3,4",
        ];
        var side = $"{LengthText.Inches(unit * 4)} in";
        var blockPatches = string.Join(
            ",",
            patches.Select((text, i) =>
            {
                var parts = text.Split(' ');
                var corners = parts.Skip(1).Select(c => c.Split(',')).Select(c => $"[\"{At(c[0])}\", \"{At(c[1])}\"]");
                return $"{{\"id\": \"{i + 1}\", \"role\": \"{parts[0]}\", \"corners\": [{string.Join(",", corners)}]}}";
            })
        );
        var json = $$$"""
            {"format": "kitwright-quilt", "version": 1, "name": "Sampler", "units": "inch",
             "roles": [{"id": "a", "name": "a"}, {"id": "b", "name": "b"}, {"id": "binding", "name": "binding"}, {"id": "backing", "name": "backing"}],
             "blocks": [{"id": "all", "name": "All", "width": "{{{side}}}", "height": "{{{side}}}", "grid": {"columns": 4, "rows": 4}, "patches": [{{{blockPatches}}}]}],
             "setting": {"kind": "straight", "columns": 3, "rows": 3, "cells": [[{"block": "all", "turns": {{{turns}}}}]]},
             "binding": {"role": "binding", "stripWidth": "2 1/2 in", "allowance": "10 in"},
             "backing": {"role": "backing", "overhang": "4 in", "seam": "1/2 in"},
             "techniques": {"{{{kind}}}": "{{{technique}}}"}}
            """;
        var read = QuiltFile.Read(json);
        Assert.Empty(read.Findings);
        return Turned(read.Value!, turns);

        string At(string n) => LengthText.Inches(unit * int.Parse(n, System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>The block itself turned, so that every pose is recognized and not only the cell.</summary>
    private static Quilt Turned(Quilt quilt, int turns)
    {
        var block = quilt.Blocks[0];
        var half = (Geometry.Surd)(block.Width / 2);
        var turn = Geometry.Motion.Shift(-half, -half).Then(Geometry.Motion.QuarterTurns(turns)).Then(Geometry.Motion.Shift(half, half));
        ImmutableArray<BlockPatch> patches = [.. block.Patches.Select(p => p with { Corners = [.. p.Corners.Select(turn.Apply)] })];
        return quilt with { Blocks = [block with { Patches = patches }] };
    }
}
