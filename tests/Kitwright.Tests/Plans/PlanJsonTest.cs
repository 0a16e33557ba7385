using System.Text.Json;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Plans;

public sealed class PlanJsonTest
{
    /// <summary>Every public record that is part of a plan, and findings.</summary>
    public static TheoryData<Type> Records =>
        [
            .. typeof(QuiltPlan)
                .Assembly.GetExportedTypes()
                .Where(t => t.Namespace == typeof(QuiltPlan).Namespace && t.GetMethod("<Clone>$") is not null)
                .Append(typeof(Finding))
                .Append(typeof(Message))
                .Append(typeof(Polygon)),
        ];

    [Theory]
    [MemberData(nameof(Records))]
    public void Every_record_comes_back_exactly(Type type)
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var before = new Specimen(seed).Make(type);
            var declared = type.BaseType == typeof(Verb) ? typeof(Verb) : type;
            var text = JsonSerializer.Serialize(before, declared, PlanJson.Options);
            var after = JsonSerializer.Deserialize(text, declared, PlanJson.Options);
            Assert.Null(Alike.Difference(before, after));
            Assert.Equal(text, JsonSerializer.Serialize(after, declared, PlanJson.Options));
        }
    }

    [Fact]
    public void Numbers_are_written_as_people_read_them()
    {
        Assert.Equal("\"3 7/8\"", JsonSerializer.Serialize(Length.Inches(3, 7, 8), PlanJson.Options));
        Assert.Equal("\"1/3\"", JsonSerializer.Serialize(new Rational(1, 3), PlanJson.Options));
        Assert.Equal("[\"6 + 1/2√2\",\"-1\"]", JsonSerializer.Serialize(new Point(6 + Surd.OfRoot2(new(1, 2)), -1), PlanJson.Options));
        Assert.Equal(
            """{"do":"trim","on":"a","rectangle":[["0","0"],["1","0"],["1","1"],["0","1"]],"counted":true}""",
            JsonSerializer.Serialize<Verb>(new Trim("a", Polygon.Rectangle(0, 0, 1, 1), Counted: true), PlanJson.Options)
        );
        Assert.Equal(
            """{"say":"k","n":2,"w":{"length":"1/2"}}""",
            JsonSerializer.Serialize(Message.Of("k", ("n", 2), ("w", Length.Inches(0, 1, 2))), PlanJson.Options)
        );
    }

    [Fact]
    public void What_can_be_computed_is_not_written()
    {
        var piece = (CutPiece)new Specimen(1).Make(typeof(CutPiece));
        Assert.DoesNotContain("toCut", JsonSerializer.Serialize(piece, PlanJson.Options));
    }

    [Theory]
    [InlineData(typeof(Length), "3")]
    [InlineData(typeof(Length), "\"3 7/0\"")]
    [InlineData(typeof(Length), "null")]
    [InlineData(typeof(Point), "[\"1\"]")]
    [InlineData(typeof(Point), "[\"1\",\"2\",\"3\"]")]
    [InlineData(typeof(Point), "[1,2]")]
    [InlineData(typeof(Point), "\"1\"")]
    [InlineData(typeof(Motion), "[\"2\",\"0\",\"0\",\"1\",\"0\",\"0\"]")]
    [InlineData(typeof(Polygon), "[[\"0\",\"0\"],[\"1\",\"0\"]]")]
    [InlineData(typeof(Polygon), "{}")]
    [InlineData(typeof(Message), "{}")]
    [InlineData(typeof(Message), "[]")]
    [InlineData(typeof(Message), "{\"say\":1}")]
    [InlineData(typeof(Message), "{\"say\":\"k\",\"x\":1.5}")]
    [InlineData(typeof(Message), "{\"say\":\"k\",\"x\":null}")]
    [InlineData(typeof(Message), "{\"say\":\"k\",\"x\":{\"length\":{}}}")]
    [InlineData(typeof(Message), "{\"say\":\"k\",\"x\":[1]}")]
    [InlineData(typeof(BattingNeed), "{\"width\":\"1\"}")]
    [InlineData(typeof(BattingNeed), "{\"width\":\"1\",\"width\":\"1\",\"height\":\"1\"}")]
    [InlineData(typeof(TraceLink), "{\"patch\":null,\"piece\":\"a\",\"recipe\":\"b\"}")]
    [InlineData(typeof(Needs), "{\"lengths\":[null],\"batting\":null}")]
    [InlineData(typeof(Needs), "{\"lengths\":null,\"batting\":null}")]
    [InlineData(typeof(Needs), "{\"batting\":null}")]
    [InlineData(typeof(Verb), "{\"do\":\"glue\",\"on\":\"a\"}")]
    [InlineData(typeof(Press), "{\"on\":\"a\",\"toward\":\"up\"}")]
    [InlineData(typeof(Press), "{\"on\":\"a\",\"toward\":1}")]
    public void What_is_absent_null_doubled_or_of_another_shape_is_refused(Type type, string text) =>
        Assert.ThrowsAny<JsonException>(() => JsonSerializer.Deserialize(text, type, PlanJson.Options));
}
