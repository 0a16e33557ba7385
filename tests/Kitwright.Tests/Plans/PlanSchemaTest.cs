using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CsCheck;
using Json.Schema;
using Kitwright.Cutting;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Tests.House;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Plans;

/// <summary>The published schema against plans as they are written, by an independent validator.</summary>
public sealed class PlanSchemaTest
{
    private static readonly string Text = Repository.Read("docs", "schema", "plan.v1.schema.json");
    private static readonly JsonNode Schema = JsonNode.Parse(Text)!;
    private static readonly JsonSchema Validator = JsonSchema.FromText(Text);

    /// <summary>The demo quilt without a colorway, cut by first fit.</summary>
    private static readonly Lazy<QuiltPlan> Sample = new(() =>
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", "ostrel-bay-stars.json")).Value!;
        return QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
    });

    private static bool Valid(JsonNode document)
    {
        using var json = JsonDocument.Parse(document.ToJsonString());
        return Validator.Evaluate(json.RootElement).IsValid;
    }

    private static JsonNode Document() => JsonNode.Parse(PlanFile.Write(Sample.Value))!;

    [Fact]
    public void It_is_a_schema_of_draft_2020_12()
    {
        using var json = JsonDocument.Parse(Text);
        Assert.True(MetaSchemas.Draft202012.Evaluate(json.RootElement).IsValid);
    }

    [Fact]
    public void A_plan_as_written_is_valid() => Assert.True(Valid(Document()));

    [Fact]
    public void A_plan_as_written_is_read_back_exactly() =>
        Assert.Null(Alike.Difference(Sample.Value, PlanFile.Read(PlanFile.Write(Sample.Value)).Value));

    [Fact]
    public void A_field_more_or_a_field_less_is_invalid()
    {
        var fields = Document()["plan"]!.AsObject().Select(p => p.Key).ToList();
        Assert.All(
            fields,
            field =>
            {
                var document = Document();
                document["plan"]!.AsObject().Remove(field);
                Assert.False(Valid(document));
            }
        );
        var more = Document();
        more["plan"]!["pieces"]![0]!["toCut"] = 3;
        Assert.False(Valid(more));
    }

    [Theory]
    [InlineData("3.875")]
    [InlineData("3 7/8 in")]
    [InlineData("3  7/8")]
    [InlineData("03")]
    public void A_length_is_written_in_one_way_only(string length)
    {
        var document = Document();
        document["plan"]!["seam"] = length;
        Assert.False(Valid(document));
    }

    [Fact]
    public void Numbers_are_written_as_the_schema_says()
    {
        var coordinate = new System.Text.RegularExpressions.Regex(Schema["$defs"]!["coordinate"]!["pattern"]!.GetValue<string>());
        var length = new System.Text.RegularExpressions.Regex(Schema["$defs"]!["length"]!["pattern"]!.GetValue<string>());
        Generate.Surds.Sample(x => Assert.Matches(coordinate, SurdText.Format(x)));
        Generate.Lengths.Sample(x => Assert.Matches(length, LengthText.Inches(x)));
    }

    /// <summary>The schema and the records name the same fields, so that neither changes without the other.</summary>
    [Fact]
    public void The_schema_has_the_fields_of_the_records()
    {
        var records = typeof(QuiltPlan)
            .Assembly.GetExportedTypes()
            .Where(t => t.Namespace == typeof(QuiltPlan).Namespace && t.GetMethod("<Clone>$") is not null && !t.IsAbstract);
        Rule.Holds(SchemaFields.Differences(Schema, records, Name));
    }

    private static string Name(Type record) =>
        record == typeof(QuiltPlan) ? "plan"
        : record.BaseType == typeof(Verb) ? "verb-" + Verbs[record]
        : SchemaFields.Camel(record.Name);

    private static readonly ImmutableDictionary<Type, string> Verbs = typeof(Verb)
        .GetCustomAttributes<JsonDerivedTypeAttribute>()
        .ToImmutableDictionary(a => a.DerivedType, a => (string)a.TypeDiscriminator!);
}
