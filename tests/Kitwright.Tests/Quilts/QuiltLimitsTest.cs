using System.Text;
using System.Text.Json.Nodes;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Files that are too large in one way are refused by that rule, and nothing else is done with them.</summary>
public sealed class QuiltLimitsTest
{
    private static JsonNode Demo() => JsonNode.Parse(Repository.Read("examples", "quilts", "ostrel-bay-stars.json"))!;

    private static void Refused(JsonNode quilt, string rule, string place) =>
        Assert.Contains(QuiltFile.Read(quilt.ToJsonString()).Findings, f => f.Rule == rule && f.Place == place);

    [Fact]
    public void Ten_thousand_roles()
    {
        var quilt = Demo();
        quilt["roles"] = new JsonArray([.. Enumerable.Range(0, 10_000).Select(i => new JsonObject { ["id"] = $"r{i}", ["name"] = "role" })]);
        Refused(quilt, "quilt.count", "/roles");
    }

    [Fact]
    public void A_million_blocks_of_one_patch()
    {
        var text = new StringBuilder("{\"format\":\"kitwright-quilt\",\"version\":1,\"blocks\":[");
        text.Append(string.Join(',', Enumerable.Repeat("{}", 1_000_000))).Append("]}");
        Assert.Contains(QuiltFile.Read(text.ToString()).Findings, f => f.Rule == "quilt.count" && f.Place == "/blocks");
    }

    [Fact]
    public void Too_much_text()
    {
        var read = QuiltFile.Read(new string(' ', QuiltLimits.Text + 1));
        Assert.Equal("quilt.text.large", Assert.Single(read.Findings).Rule);
    }

    [Fact]
    public void A_long_name()
    {
        var quilt = Demo();
        quilt["name"] = new string('n', QuiltLimits.Name + 1);
        Refused(quilt, "quilt.text.long", "/name");
    }

    [Fact]
    public void Too_many_corners_in_a_block()
    {
        var quilt = Demo();
        var corners = new JsonArray([.. Enumerable.Range(0, QuiltLimits.CornersOfPatch).Select(i => new JsonArray(i, i * i))]);
        var patches = Enumerable.Range(0, 21).Select(i => new JsonObject { ["id"] = $"{i}", ["role"] = "star", ["corners"] = corners.DeepClone() });
        quilt["blocks"]![0]!["patches"] = new JsonArray([.. patches]);
        Refused(quilt, "quilt.corners", "/blocks/0/patches");
    }

    // A thousand slivers that nothing matches: told up to the limit, with a note that there is more.
    [Fact]
    public void More_findings_than_a_person_reads()
    {
        var quilt = Demo();
        quilt["roles"] = new JsonArray([.. Enumerable.Range(0, 300).Select(i => new JsonObject { ["id"] = "not an id", ["name"] = "role" })]);
        var findings = QuiltFile.Read(quilt.ToJsonString()).Findings;
        Assert.Equal(QuiltLimits.Findings, findings.Length);
        Assert.Equal("quilt.findings.more", findings[^1].Rule);
    }

    // Arcs that bulge towards each other until nothing is left between them: the one way to have no area without a spike.
    [Fact]
    public void A_lens_of_two_equal_arcs_has_no_area()
    {
        var quilt = Demo();
        var arc = (int edge, bool clockwise) => new JsonObject { ["edge"] = edge, ["center"] = new JsonArray("6", "0"), ["clockwise"] = clockwise };
        quilt["blocks"]![0]!["patches"]![0] = new JsonObject
        {
            ["id"] = "1",
            ["role"] = "star",
            ["corners"] = new JsonArray(new JsonArray("3", "0"), new JsonArray("9", "0")),
            ["arcs"] = new JsonArray(arc(0, true), arc(1, false)),
        };
        Refused(quilt, "quilt.area", "/blocks/0/patches/0");
    }
}
