using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Plans;

public sealed class PlanFileTest
{
    private static QuiltPlan Plan(int seed) => (QuiltPlan)new Specimen(seed).Make(typeof(QuiltPlan));

    [Fact]
    public void A_plan_comes_back_exactly()
    {
        for (var seed = 0; seed < 10; seed++)
        {
            var plan = Plan(seed);
            var read = PlanFile.Read(PlanFile.Write(plan));
            Assert.True(read.Good);
            Assert.Null(Alike.Difference(plan, read.Value));
        }
    }

    /// <summary>Plans with a table from before rulers had a length.</summary>
    [Fact]
    public void A_table_without_a_ruler_has_the_usual_one()
    {
        var table = JsonSerializer.Deserialize<TableTerms>("""{"layers":2,"squareEvery":0,"squaringLoss":"1/2"}""", PlanJson.Options);
        Assert.Equal(new TableTerms(2, 0, Length.Inches(0, 1, 2)) { RulerLength = Length.Inches(24) }, table);
    }

    [Theory]
    [InlineData("", "plan.json", "line 1")]
    [InlineData("{", "plan.json", "line 1")]
    [InlineData("{\n\"format\": oops }", "plan.json", "line 2")]
    [InlineData("{\"a\":1,\"a\":2}", "plan.json", "line 1")]
    [InlineData("[]", "plan.format", "/format")]
    [InlineData("{}", "plan.format", "/format")]
    [InlineData("{\"format\":\"kitwright-quilt\",\"version\":1}", "plan.format", "/format")]
    [InlineData("{\"format\":\"kitwright-plan\",\"version\":1}", "plan.format", "/format")]
    [InlineData("{\"format\":\"kitwright-plan\",\"version\":2,\"plan\":{}}", "plan.version", "/version")]
    [InlineData("{\"format\":\"kitwright-plan\",\"plan\":{}}", "plan.version", "/version")]
    [InlineData("{\"format\":\"kitwright-plan\",\"version\":1,\"plan\":{}}", "plan.shape", "/plan")]
    [InlineData("{\"format\":\"kitwright-plan\",\"version\":1,\"plan\":null}", "plan.shape", "/plan")]
    [InlineData("{\"format\":\"\\ud800\",\"version\":1,\"plan\":null}", "plan.format", "/format")]
    public void What_is_no_plan_is_a_finding(string text, string rule, string place)
    {
        var finding = Assert.Single(PlanFile.Read(text).Findings);
        Assert.Equal((rule, place), (finding.Rule, finding.Place));
        Assert.NotEqual("", Catalog.English.Say(finding.Reason));
        Assert.NotEqual("", Catalog.English.Say(finding.Remedy));
    }

    [Fact]
    public void A_wrong_field_is_named_by_its_place()
    {
        var document = JsonNode.Parse(PlanFile.Write(Plan(3)))!;
        document["plan"]!["pieces"]!.AsArray().Insert(0, JsonNode.Parse("""{"id":"piece/A1","width":5}"""));
        var finding = Assert.Single(PlanFile.Read(document.ToJsonString()).Findings);
        Assert.Equal(("plan.shape", "/plan/pieces/0/width"), (finding.Rule, finding.Place));
    }

    /// <summary>One value of the document replaced by another, or one character by another: read or refused, never an exception.</summary>
    [Fact]
    public void A_damaged_plan_never_throws()
    {
        var text = PlanFile.Write(Plan(2));
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Char["{}[]\":,0123456789 /-√abcnulltrue\\"])
            .Sample(
                (at, c) =>
                {
                    var damaged = string.Concat(text.AsSpan(0, at), $"{c}", text.AsSpan(at + 1));
                    var read = PlanFile.Read(damaged);
                    Assert.Equal(read.Value is null, read.Findings.Length > 0);
                }
            );
    }
}
