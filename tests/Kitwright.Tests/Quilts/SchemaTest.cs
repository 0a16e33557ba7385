using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>The published schema against the files, by an independent validator of JSON Schema 2020-12.</summary>
public sealed class SchemaTest
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(Repository.Read("docs", "schema", "quilt.v1.schema.json"));

    // What no schema can tell: names that point nowhere, geometry, products of numbers, doubled names.
    private static readonly string[] BeyondSchema =
    [
        "quilt.role.unknown", "quilt.role.unused", "quilt.block.unknown", "quilt.colorway.open", "quilt.twice", "quilt.field.twice",
        "quilt.cells.ragged", "quilt.cell.size", "quilt.onpoint.square", "quilt.blocks.many", "quilt.side", "quilt.size.large", "quilt.fine",
        "quilt.corners.few", "quilt.corner.twice", "quilt.arc", "quilt.spike", "quilt.crossing", "quilt.area", "quilt.outside",
        "quilt.overlap", "quilt.gap", "quilt.arc.alone", "quilt.halved", "quilt.lines", "quilt.drop",
        "quilt.border.units", "quilt.border.coping", "quilt.border.units.corner", "quilt.border.units.alternate", "quilt.border.units.mitered",
        "quilt.seam.unusual", "quilt.ruler-step.unusual",
    ];

    public static TheoryData<string, string> Faulty()
    {
        var rows = new TheoryData<string, string>();
        foreach (var row in FaultyQuiltTest.Table().Where(r => r.Data.Item2 is not ("quilt.json" or "quilt.deep" or "quilt.character")))
        {
            rows.Add(row.Data.Item1, row.Data.Item2);
        }

        return rows;
    }

    private static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    [Fact]
    public void Is_a_schema_of_draft_2020_12()
    {
        using var document = JsonDocument.Parse(Repository.Read("docs", "schema", "quilt.v1.schema.json"));
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(DemoQuiltTest.Files), MemberType = typeof(DemoQuiltTest))]
    public void Demo_quilts_are_valid(string file) => Assert.True(IsValid(Repository.Read("examples", "quilts", file)));

    [Theory]
    [MemberData(nameof(Faulty))]
    public void Faulty_files_are_invalid_where_a_schema_can_tell(string file, string rule)
    {
        // 6e0 is a number to JSON; that its digits are no fraction is beyond the schema too.
        var expected = BeyondSchema.Contains(rule) || file == "exponent.json";
        Assert.Equal(expected, IsValid(Repository.Read("data", "faulty", "quilts", file)));
    }

    [Theory]
    [InlineData("3 7/8 in", true)]
    [InlineData("3-7/8", true)]
    [InlineData("3⅞\"", true)]
    [InlineData("9.5 cm", true)]
    [InlineData(".5", true)]
    [InlineData("95 mm", true)]
    [InlineData("1/3 yd", true)]
    [InlineData("7/0", false)]
    [InlineData("1.2.3", false)]
    [InlineData("3 7/8 miles", false)]
    [InlineData("three", false)]
    [InlineData("0 in", false)]
    [InlineData("-1 in", false)]
    public void Schema_and_reader_agree_on_a_width(string width, bool good)
    {
        var json = JsonNode.Parse(Repository.Read("examples", "quilts", "ostrel-bay-stars.json"))!;
        json["borders"]![0]!["width"] = width;
        Assert.Equal(good, IsValid(json.ToJsonString()));
        Assert.Equal(good, QuiltFile.Read(json.ToJsonString()).Good);
    }

    [Fact]
    public void Everything_is_described()
    {
        var schema = JsonNode.Parse(Repository.Read("docs", "schema", "quilt.v1.schema.json"))!;
        foreach (var (name, field) in schema["properties"]!.AsObject())
        {
            Assert.True(field!["description"] is not null || field["$ref"] is not null, name);
        }
    }
}
