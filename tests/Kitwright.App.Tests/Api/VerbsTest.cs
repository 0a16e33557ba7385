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
        Assert.StartsWith("%PDF-", (await api.Get($"{Stars}/bag?form=strip-cut&colorway=Heather%20dusk")).Body, StringComparison.Ordinal);
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
    public async Task Accuracy_picture_templates_and_stash_are_answered_too()
    {
        using var api = new ApiClient(chromium.Address);

        var accuracy = await api.Get($"{Stars}/accuracy?quilts=200&across=3%203/8&middle=1&tolerance=1/32");
        Assert.Equal("kitwright-accuracy", accuracy.Json.GetProperty("format").GetString());
        Assert.Contains(accuracy.Json.GetProperty("sentences").EnumerateArray(), said => said.GetString()!.StartsWith("Off by more than the 1/32 in that you allow", StringComparison.Ordinal));
        Assert.StartsWith("<svg", (await api.Post("/api/draw", Quilt)).Body.TrimStart(), StringComparison.Ordinal);
        Assert.Equal("image/png", (await api.Get($"{Stars}/draw?as=png&width=200&colorway=Heather%20dusk")).Type);
        Assert.Equal("application/pdf", (await api.Get($"{Stars}/templates?paper=a4")).Type);
        var stash = (await api.Get($"{Stars}/stash?have=6%20yd&have=12%20fat%20quarters&have=9%20yd%20of%2042")).Json.GetProperty("cut");
        Assert.True(stash.GetProperty("sheets").GetInt32() > 0);
    }

    [Theory]
    [InlineData("accuracy?quilts=1")]
    [InlineData("accuracy?across=9&middle=1")]
    [InlineData("accuracy?tolerance=1")]
    [InlineData("draw?as=gif")]
    [InlineData("draw?as=png&width=1000000")]
    [InlineData("templates?paper=foolscap")]
    [InlineData("stash")]
    [InlineData("stash?have=a%20cow")]
    [InlineData("stash?have=1%20yd&trim=much")]
    public async Task What_makes_no_sense_is_a_problem(string asked)
    {
        using var api = new ApiClient(chromium.Address);

        Assert.NotEmpty((await api.Get($"{Stars}/{asked}")).Problem(422));
    }

    [Fact]
    public async Task Any_list_of_pieces_is_cut_as_the_command_cuts_it()
    {
        using var api = new ApiClient(chromium.Address);
        const string Pieces = "label,width,height,count\nA,9 1/2,4,11\nB,6,4,7\nC,15,2 1/2,5\n";
        var command = await Run.Of("cut", Scratch.Written(Pieces), "--width", "40", "--turn", "--json");

        var cut = (await api.Post("/api/cut?width=40&turn", Pieces, "text/csv")).Json.GetProperty("cut");

        foreach (var field in (string[])["status", "length", "bound", "cloths"])
        {
            Assert.Equal(Flat(command.Json.GetProperty("cut")), Flat(cut));

            string Flat(System.Text.Json.JsonElement of) => JsonNode.Parse(of.GetProperty(field).GetRawText())!.ToJsonString();
        }

        Assert.NotEmpty((await api.Post("/api/cut?width=40&cloth=/etc/hosts", Pieces, "text/csv")).Problem(422));
        Assert.NotEmpty((await api.Post("/api/cut?width=wide", Pieces, "text/csv")).Problem(422));
        Assert.NotEmpty((await api.Post("/api/cut", Pieces, "text/csv")).Problem(422));
        Assert.NotEmpty((await api.Post("/api/cut?width=40", "nonsense", "text/csv")).Problem(422));
    }

    [Fact]
    public async Task The_block_book_its_settings_and_a_quilt_of_it_are_given()
    {
        using var api = new ApiClient(chromium.Address);

        Assert.True((await api.Get("/api/blocks")).Json.GetProperty("blocks").GetArrayLength() > 80);
        Assert.Equal("ohio-star", (await api.Get("/api/blocks/ohio-star")).Json.GetProperty("id").GetString());
        var sets = (await api.Get("/api/blocks/half-square/sets")).Json.GetProperty("sets");
        Assert.Equal(17, sets.GetProperty("repeats")[0].GetProperty("different").GetInt64());
        var quilt = (await api.Get("/api/blocks/ohio-star/quilt?columns=3&rows=4&size=9")).Body;
        Assert.Equal("plan", (await api.Post("/api/plan", quilt)).Json.EnumerateObject().Select(p => p.Name).First(name => name == "plan"));
        Assert.NotEmpty((await api.Get("/api/blocks/no-such")).Problem(404));
        Assert.NotEmpty((await api.Get("/api/blocks/ohio-star/quilt?rows=0")).Problem(422));
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
