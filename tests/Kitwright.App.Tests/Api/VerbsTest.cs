using System.Text.Json.Nodes;
using Kitwright.App.Tests.Browser;
using Kitwright.App.Tests.Commands;

namespace Kitwright.App.Tests.Api;

/// <summary>The API says what the commands say.</summary>
public sealed class VerbsTest(Chromium chromium)
{
    private const string Stars = "/api/quilts/ostrel-bay-stars";

    private static readonly string Quilt = File.ReadAllText(Run.Stars);

    [Fact]
    public async Task A_plan_is_the_command_s_and_checks_good()
    {
        using var api = new ApiClient(chromium.Address);
        var command = await Run.Of("plan", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--json");

        var kept = await api.Get($"{Stars}/plan?colorway=Harbor%20lights");
        var posted = await api.Post("/api/plan?colorway=Harbor%20lights", Quilt);

        Assert.Equal("application/json", kept.Type);
        Assert.Equal(JsonNode.Parse(command.Output)!.ToJsonString(), JsonNode.Parse(kept.Body)!.ToJsonString());
        Assert.Equal(kept.Body, posted.Body);
        Assert.True((await api.Post("/api/check", kept.Body)).Json.GetProperty("good").GetBoolean());
    }

    [Fact]
    public async Task Choices_of_the_query_change_the_plan()
    {
        using var api = new ApiClient(chromium.Address);

        var wide = await api.Get($"{Stars}/plan?width=42&spare=2&budget=while-you-type&by-the-inch=true&length-per-fabric=true");

        var terms = wide.Json.GetProperty("plan").GetProperty("cloths")[0].GetProperty("terms");
        Assert.Equal("42", terms.GetProperty("usableWidth").GetString());
        Assert.Equal("while-you-type", wide.Json.GetProperty("plan").GetProperty("budget").GetString());
    }

    [Fact]
    public async Task Sewing_kits_and_booklet_are_answered_too()
    {
        using var api = new ApiClient(chromium.Address);

        Assert.True((await api.Get($"{Stars}/sew")).Json.GetProperty("sewing").GetProperty("steps").GetArrayLength() > 3);
        var kits = await api.Get($"{Stars}/kits?each=0&want=Harbor%20lights%3D12");
        Assert.Equal("kitwright-kits", kits.Json.GetProperty("format").GetString());
        var booklet = await api.Get($"{Stars}/booklet?colorway=Heather%20dusk&paper=a4");
        Assert.Equal("application/pdf", booklet.Type);
        Assert.StartsWith("%PDF-", booklet.Body, StringComparison.Ordinal);
        Assert.Equal("application/pdf", (await api.Post("/api/booklet", Quilt)).Type);
    }

    [Fact]
    public async Task Ways_to_a_size_are_proposed_or_the_size_is_a_finding()
    {
        using var api = new ApiClient(chromium.Address);

        var ways = (await api.Get($"{Stars}/sizes?target=70x90")).Json.GetProperty("ways");
        Assert.InRange(ways.GetArrayLength(), 1, 6);
        Assert.NotEmpty((await api.Get($"{Stars}/sizes")).Problem(422));
        Assert.NotEmpty((await api.Get($"{Stars}/sizes?bed=hammock")).Problem(422));
    }

    [Fact]
    public async Task A_changed_plan_is_found_out()
    {
        using var api = new ApiClient(chromium.Address);
        var plan = JsonNode.Parse((await api.Get($"{Stars}/plan")).Body)!;
        plan["plan"]!["pieces"]![0]!["width"] = "1 1/8";

        var check = await api.Post("/api/check", plan.ToJsonString());

        Assert.Equal(200, (int)check.Status);
        Assert.False(check.Json.GetProperty("good").GetBoolean());
        Assert.NotEqual(0, check.Json.GetProperty("findings").GetArrayLength());
    }

    [Theory]
    [InlineData("width=0", "query/width")]
    [InlineData("width=NaN", "query/width")]
    [InlineData("spare=-1", "query/spare")]
    [InlineData("spare=99999999999", "query/spare")]
    [InlineData("budget=for-ever", "query/budget")]
    [InlineData("by-the-inch=perhaps", "query/by-the-inch")]
    public async Task A_choice_that_cannot_be_is_a_finding(string query, string place)
    {
        using var api = new ApiClient(chromium.Address);

        var answer = await api.Get($"{Stars}/plan?{query}");

        Assert.Equal(["api.query"], answer.Problem(422));
        Assert.Equal(place, answer.Json.GetProperty("findings")[0].GetProperty("place").GetString());
    }

    [Fact]
    public async Task Every_faulty_quilt_is_a_problem_with_the_findings_of_the_command()
    {
        using var api = new ApiClient(chromium.Address);
        foreach (var file in Directory.GetFiles(Run.File("data", "faulty", "quilts"), "*.json"))
        {
            var answer = await api.Post("/api/plan", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
            if (answer.Status != System.Net.HttpStatusCode.OK)
            {
                Assert.NotEmpty(answer.Problem(422));
            }
        }
    }
}
