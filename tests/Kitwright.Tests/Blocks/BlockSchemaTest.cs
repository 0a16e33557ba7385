using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Kitwright.Blocks;
using Xunit;

namespace Kitwright.Tests.Blocks;

/// <summary>The published schema of block files against the book, by an independent validator.</summary>
public sealed class BlockSchemaTest
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(Repository.Read("docs", "schema", "block.v1.schema.json"));

    private static bool IsValid(JsonNode block)
    {
        using var document = JsonDocument.Parse(block.ToJsonString());
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    private static JsonNode Load(string file) => JsonNode.Parse(Repository.Read("blocks", file))!;

    [Theory]
    [MemberData(nameof(BlockBookTest.Files), MemberType = typeof(BlockBookTest))]
    public void Every_block_is_valid(string file) => Assert.True(IsValid(Load(file)));

    public static TheoryData<string, string, string> Faults() =>
        new()
        {
            { "shoofly.json", "format", "\"recipe\"" },
            { "shoofly.json", "version", "2" },
            { "shoofly.json", "id", "\"a/b\"" },
            { "shoofly.json", "family", "\"nine\"" },
            { "shoofly.json", "patches", "[]" },
            { "shoofly.json", "grid", "{ \"columns\": 0, \"rows\": 3 }" },
            { "log-cabin.json", "logCabin", "{ \"center\": \"1\", \"light\": \"0\", \"rounds\": 5 }" },
            { "log-cabin.json", "logCabin", "{ \"center\": \"1\", \"light\": \"1\", \"rounds\": 500 }" },
            { "pineapple.json", "pineapple", "{ \"center\": \"3\", \"rounds\": 2 }" },
        };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Schema_and_reader_refuse_a_fault(string file, string field, string value)
    {
        var block = Load(file);
        block[field] = JsonNode.Parse(value);
        Assert.False(IsValid(block));
        Assert.False(BlockFile.Read(block.ToJsonString()).Good);
    }

    // Beyond any schema: a strip wider than half the center leaves a pineapple without its corners.
    [Fact]
    public void Impossible_parameters_are_findings()
    {
        var block = Load("pineapple.json");
        block["pineapple"]!["strip"] = "2";
        Assert.False(BlockFile.Read(block.ToJsonString()).Good);
    }
}
