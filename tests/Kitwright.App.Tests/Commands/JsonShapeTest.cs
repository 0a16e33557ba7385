using System.Collections.Concurrent;
using System.Text.Json;
using Json.Schema;

namespace Kitwright.App.Tests.Commands;

/// <summary>What <c>--json</c> prints against the published schemas, asked from the command that prints them.</summary>
public sealed class JsonShapeTest
{
    [Fact]
    public async Task Plans_and_their_checks_have_the_published_shapes()
    {
        var plan = await Run.Of("plan", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--json");
        await HasShape("plan", plan.Output);

        var check = await Run.Of("check", Scratch.Written(plan.Output), "--json");
        await HasShape("check", check.Output);
    }

    [Fact]
    public async Task Kits_have_the_published_shape() =>
        await HasShape("kits", (await Run.Of("kits", Run.Stars, Run.Stock, "--each", "9", "--json")).Output);

    [Fact]
    public async Task Sewing_has_the_published_shape() => await HasShape("sew", (await Run.Of("sew", Run.Stars, "--json")).Output);

    [Theory]
    [InlineData("--width", "40")]
    [InlineData("--width", "40", "--unit", "1/8", "--increment", "36")]
    [InlineData("--width", "40", "--stages", "3", "--fold", "2")]
    public async Task Cut_lists_have_the_published_shape(params string[] options) =>
        await HasShape("cut", (await Run.Of(["cut", Scratch.Written("label,width,height,count\nA,3,4,5\nB,50,4,5\n"), "--json", .. options])).Output);

    [Fact]
    public async Task A_stock_file_s_answer_has_the_published_shape() =>
        await HasShape("stock", (await Run.Of("stock", Run.Stock, "--dry-run", "--json")).Output);

    [Theory]
    [InlineData("cut", "cut", "no-such-file.csv", "--width", "40", "--json")]
    [InlineData("sew", "sew", "no-such-file.json", "--json")]
    [InlineData("stock", "stock", "no-such-file.csv", "--dry-run", "--json")]
    [InlineData("plan", "plan", "no-such-file.json", "--json")]
    [InlineData("check", "check", "no-such-file.json", "--json")]
    [InlineData("kits", "kits", "no-such-file.json", "no-such-file.csv", "--json")]
    public async Task Findings_alone_have_it_too(string schema, params string[] args)
    {
        var run = await Run.Of(args);
        Assert.Equal(1, run.Exit);
        await HasShape(schema, run.Output);
    }

    // The validator keeps schemas by their id and takes each once.
    private static readonly ConcurrentDictionary<string, Lazy<Task<JsonSchema>>> Schemas = new();

    private static async Task<JsonSchema> Read(string name) => JsonSchema.FromText((await Run.Of("schema", name)).Output);

    private static async Task HasShape(string name, string output)
    {
        var schema = await Schemas.GetOrAdd(name, n => new(() => Read(n))).Value;
        using var document = JsonDocument.Parse(output);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join('\n', (result.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Take(10).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}"))
        );
    }
}
