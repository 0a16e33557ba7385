using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Piecing;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Blocks that can be drawn and hardly sewn: a note at the patch, with what to do about it.</summary>
public sealed class NarrowPatchesTest
{
    private static ImmutableArray<Finding> Findings(string patches)
    {
        var read = QuiltFile.Read(
            $$$"""
            {"format": "kitwright-quilt", "version": 1, "name": "Narrow", "units": "inch",
             "roles": [{"id": "a", "name": "a"}, {"id": "b", "name": "b"}, {"id": "binding", "name": "binding"}, {"id": "backing", "name": "backing"}],
             "blocks": [{"id": "one", "name": "One", "width": "6 in", "height": "6 in", "grid": {"columns": 4, "rows": 4}, "patches": [{{{patches}}}]}],
             "setting": {"kind": "straight", "columns": 2, "rows": 2, "cells": [[{"block": "one"}]]},
             "binding": {"role": "binding", "stripWidth": "2 1/2 in", "allowance": "10 in"},
             "backing": {"role": "backing", "overhang": "4 in", "seam": "1/2 in"}}
            """
        );
        Assert.Empty(read.Findings.Where(f => f.Weight == Weight.Fault));
        return QuiltPlanner.Plan(read.Value!, null, [], PlanOptions.Usual, FirstFit.Plan).Findings;
    }

    private static string Patch(int id, string role, params string[] corners) =>
        $$"""{"id": "{{id}}", "role": "{{role}}", "corners": [{{string.Join(",", corners.Select(c => "[" + string.Join(",", c.Split(' ').Select(n => $"\"{n}\"")) + "]"))}}]}""";

    private static string Strips(string width) =>
        string.Join(",", Patch(1, "a", "0 0", $"{width} 0", $"{width} 6", "0 6"), Patch(2, "b", $"{width} 0", "6 0", "6 6", $"{width} 6"));

    [Theory]
    [InlineData("0.49", true)]
    [InlineData("0.5", false)]
    public void A_patch_narrower_than_two_seams_is_said(string width, bool narrow)
    {
        var found = Findings(Strips(width)).Where(f => f.Rule == "piecing.slender").ToArray();
        Assert.Equal(narrow ? ["block/one/patch/1"] : [], found.Select(f => f.Place));
    }

    /// <summary>A patch aslant is as wide as the band that holds it, not as its bounding box.</summary>
    [Fact]
    public void A_slanted_sliver_is_said()
    {
        var found = Findings(string.Join(",", Patch(1, "a", "0 0", "6 0", "6 5.5"), Patch(2, "b", "0 0", "6 5.5", "6 6"), Patch(3, "a", "0 0", "6 6", "0 6")));
        Assert.Equal("block/one/patch/2", Assert.Single(found, f => f.Rule == "piecing.slender").Place);
    }

    /// <summary>The first two patches share 1/8 in of an edge only.</summary>
    [Fact]
    public void A_seam_shorter_than_its_allowance_is_said()
    {
        var found = Findings(
            string.Join(
                ",",
                Patch(1, "a", "0 0", "3.125 0", "3.125 3", "0 3"),
                Patch(2, "b", "3.125 0", "6 0", "6 3", "3.125 3"),
                Patch(3, "b", "0 3", "3 3", "3 6", "0 6"),
                Patch(4, "a", "3 3", "6 3", "6 6", "3 6")
            )
        );
        var finding = Assert.Single(found, f => f.Rule == "piecing.short-seam");
        Assert.Equal(("block/one/patch/1", Weight.Note), (finding.Place, finding.Weight));
    }
}
