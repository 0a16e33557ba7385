using System.Text.Json.Nodes;

namespace Kitwright.App.Tests.Commands;

/// <summary>The commands as a user runs them: what they print and what they answer to the shell.</summary>
public sealed class CommandTest
{
    [Fact]
    public async Task A_plan_checks_good_when_it_is_read_back()
    {
        var plan = await Run.Of("plan", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--json");
        Assert.Equal(0, plan.Exit);

        var check = await Run.Of("check", Scratch.Written(plan.Output));

        Assert.Equal((0, ""), (check.Exit, check.Error));
        Assert.StartsWith("The plan holds", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plan_with_a_changed_piece_is_refused_with_rule_place_measured_and_expected()
    {
        var plan = JsonNode.Parse((await Run.Of("plan", Run.Stars, "--json")).Output)!;
        var piece = plan["plan"]!["pieces"]![0]!;
        piece["width"] = "1 1/8";

        var check = await Run.Of("check", Scratch.Written(plan.ToJsonString()), "--json");

        Assert.Equal(1, check.Exit);
        Assert.False(check.Json.GetProperty("good").GetBoolean());
        var finding = check.Json.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("measured").GetString() is not null);
        Assert.StartsWith("check.", finding.GetProperty("rule").GetString(), StringComparison.Ordinal);
        Assert.NotEqual("", finding.GetProperty("place").GetString());
        Assert.NotNull(finding.GetProperty("expected").GetString());
    }

    [Fact]
    public async Task A_plan_reads_as_a_quilter_writes_it()
    {
        var plan = await Run.Of("plan", Run.Stars);

        Assert.Matches(@"Cut \d+ strips 3 1/2 in × WOF. From \d+ of them sub-cut \d+ of 3 1/2 × 6 1/2 \(A1\)\.", plan.Output);
        Assert.Contains("Binding: 10 strips of 2 1/2 in for 369 in", plan.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Kits_say_what_the_bolts_carry_and_what_to_order()
    {
        var kits = await Run.Of("kits", Run.Stars, Run.Stock, "--each", "0", "--want", "Harbor lights=12");

        Assert.Equal(0, kits.Exit);
        Assert.Contains("The bolts carry 8 kits of Harbor lights.", kits.Output, StringComparison.Ordinal);
        Assert.Contains("Of 12 kits of Harbor lights wanted, 8 can be filled beside the others.", kits.Output, StringComparison.Ordinal);
        Assert.Contains("square off 1 in", kits.Output, StringComparison.Ordinal);
        Assert.Contains("Order ", kits.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("plan")]
    [InlineData("sew-it-for-me")]
    [InlineData("plan", "a.json", "--budget", "for-ever")]
    [InlineData("plan", "a.json", "--spare", "-1")]
    [InlineData("plan", "a.json", "--width", "0")]
    public async Task Wrong_use_answers_2_and_says_how(params string[] args)
    {
        var run = await Run.Of(args);

        Assert.Equal(2, run.Exit);
        Assert.Contains("--help", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", "no-such-file.json")]
    [InlineData("check", "no-such-file.json")]
    [InlineData("kits", "no-such-file.json", "no-such-file.csv")]
    [InlineData("schema", "no-such-schema")]
    public async Task What_is_not_there_answers_1_with_a_remedy(params string[] args)
    {
        var run = await Run.Of(args);

        Assert.Equal((1, ""), (run.Exit, run.Error));
        Assert.NotEqual("", run.Output);
        Assert.DoesNotContain("   at ", run.Output, StringComparison.Ordinal);
    }

    /// <summary>Broken files of every kind: a finding, exit code 1, nothing that looks like a stack trace.</summary>
    [Theory]
    [InlineData("{")]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"format\":\"kitwright-quilt\",\"version\":99}")]
    [InlineData("\u0000\u0001")]
    public async Task A_broken_file_is_a_finding(string content)
    {
        var path = Scratch.Written(content);
        foreach (var args in new string[][] { ["plan", path], ["check", path], ["kits", path, Run.Stock], ["kits", Run.Stars, path] })
        {
            var run = await Run.Of(args);
            Assert.Equal((1, ""), (run.Exit, run.Error));
            Assert.DoesNotContain("Exception", run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Every_faulty_quilt_is_refused_by_the_command()
    {
        var files = Directory.GetFiles(Run.File("data", "faulty", "quilts"), "*.json");
        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            var run = await Run.Of("plan", file, "--json");
            Assert.True(run.Exit is 0 or 1, $"{Path.GetFileName(file)}: {run.Error}");
            Assert.True(run.Json.GetProperty("findings").GetArrayLength() > 0, Path.GetFileName(file));
        }
    }

    [Fact]
    public async Task A_piece_wider_than_the_cloth_is_named_with_its_remedy()
    {
        var run = await Run.Of("plan", Run.Stars, "--width", "3");

        Assert.Equal(1, run.Exit);
        Assert.DoesNotContain("Exception", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"Fabric [A-Z] is cut 3 1/2 × 3 1/2 in, and a strip of the cloth holds 3 in\.", run.Output);
    }

    [Fact]
    public async Task Schemas_are_listed_and_printed()
    {
        var names = await Run.Of("schema");
        Assert.Contains("quilt.v1", names.Output, StringComparison.Ordinal);

        foreach (var name in names.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Assert.Contains("2020-12", (await Run.Of("schema", name.Trim())).Json.GetProperty("$schema").GetString()!, StringComparison.Ordinal);
        }
    }
}
