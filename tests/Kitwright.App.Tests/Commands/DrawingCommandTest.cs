using System.Text.Json.Nodes;
using System.Xml.Linq;
using Kitwright.Blocks;

namespace Kitwright.App.Tests.Commands;

/// <summary>The commands that draw, and the book of blocks.</summary>
public sealed class DrawingCommandTest
{
    private static string Path(string ending) => Scratch.File("picture." + ending);

    [Fact]
    public async Task A_quilt_is_drawn_as_svg_and_png_in_one_go()
    {
        string svg = Path("svg"),
            png = Path("png");
        var run = await Run.Of("draw", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--svg", svg, "--png", png, "--width", "640");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Equal("svg", XDocument.Load(svg).Root!.Name.LocalName);
        var bytes = await File.ReadAllBytesAsync(png, TestContext.Current.CancellationToken);
        Assert.Equal("89504E470D0A1A0A", Convert.ToHexString(bytes[..8]));
        // The header's width, big-endian.
        Assert.Equal(640, (bytes[18] * 256) + bytes[19]);
    }

    [Theory]
    [InlineData("draw")]
    [InlineData("draw", "a.json")]
    [InlineData("draw", "a.json", "--png", "b.png", "--width", "15")]
    [InlineData("blocks")]
    [InlineData("blocks", "list", "--family", "cars")]
    public async Task Wrong_use_answers_2(params string[] args) => Assert.Equal(2, (await Run.Of(args)).Exit);

    [Theory]
    [InlineData("draw", "no-such-file.json", "--svg", "a.svg")]
    [InlineData("blocks", "show", "no-such-block")]
    [InlineData("blocks", "export", "no-such-block")]
    public async Task What_is_not_there_answers_1(params string[] args)
    {
        var run = await Run.Of(args);
        Assert.Equal((1, ""), (run.Exit, run.Error));
        Assert.NotEqual("", run.Output);
    }

    [Fact]
    public async Task A_picture_that_no_memory_holds_is_a_finding()
    {
        var run = await Run.Of("draw", Run.Stars, "--png", Path("png"), "--width", "20000");
        Assert.Equal(1, run.Exit);
        Assert.Contains("100,000,000 pixels", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_block_of_the_book_is_listed_shown_and_exported()
    {
        var listed = (await Run.Of("blocks", "list", "--json")).Json.GetProperty("blocks");
        Assert.Equal(BlockBook.All.Select(b => b.Id), listed.EnumerateArray().Select(b => b.GetProperty("id").GetString()));

        var shown = await Run.Of("blocks", "show", "log-cabin");
        Assert.Contains("Log cabin", shown.Output, StringComparison.Ordinal);

        var exported = await Run.Of("blocks", "export", "log-cabin");
        Assert.Equal(0, exported.Exit);
        Assert.True(BlockFile.Read(exported.Output).Good);
    }

    // Derived for this project: 17 on 2 × 2 and 3,692 on 3 × 3 for a block with one diagonal mirror.
    [Fact]
    public async Task Settings_are_counted_and_drawn()
    {
        var svg = Path("svg");
        var run = await Run.Of("sets", "log-cabin", "--json", "--svg", svg);

        Assert.Equal((0, ""), (run.Exit, run.Error));
        var repeats = run.Json.GetProperty("sets").GetProperty("repeats");
        Assert.Equal([17, 3_692], repeats.EnumerateArray().Take(2).Select(r => r.GetProperty("different").GetInt32()));
        Assert.Contains("17 settings of Log cabin", XDocument.Load(svg).Root!.Attribute("aria-label")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such-block")]
    [InlineData("no-such-file.json")]
    public async Task Settings_of_what_cannot_be_turned_are_a_finding(string block)
    {
        var run = await Run.Of("sets", block);
        Assert.Equal((1, ""), (run.Exit, run.Error));
    }

    [Fact]
    public async Task Sashing_on_point_that_ends_in_halved_cornerstones_is_cut_and_sewn()
    {
        var quilt = JsonNode.Parse(await File.ReadAllTextAsync(Run.File("examples", "quilts", "tidemark-nine-patch.json"), TestContext.Current.CancellationToken))!;
        quilt["setting"]!["columns"] = 2;
        quilt["setting"]!["rows"] = 3;
        quilt["setting"]!["sashing"] = JsonNode.Parse("""{ "width": "1 in", "role": "dark", "cornerstone": "light", "outer": true, "halved": true }""");
        quilt["borders"] = new JsonArray();

        var run = await Run.Of("plan", Scratch.Written(quilt.ToJsonString()), "--json");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        // Own arithmetic: 2 × 3 on point is 8 blocks; of their 32 sides 16 are shared in pairs, so 24 sashes.
        var sashes = run.Json.GetProperty("plan").GetProperty("design").GetProperty("patches").EnumerateArray().Count(p => p.GetProperty("id").GetString()!.StartsWith("frame/sash/", StringComparison.Ordinal));
        Assert.Equal(24, sashes);
    }

    [Fact]
    public async Task Ways_to_a_size_come_with_their_cloth()
    {
        var run = await Run.Of("sizes", Run.Stars, "--target", "60x80", "--json");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        var ways = run.Json.GetProperty("ways").EnumerateArray().ToList();
        Assert.Equal(6, ways.Count);
        Assert.All(ways, way => Assert.NotEqual(System.Text.Json.JsonValueKind.Null, way.GetProperty("cloth").ValueKind));
    }

    [Theory]
    [InlineData(1, "--target", "60")]
    [InlineData(1, "--bed", "moon")]
    [InlineData(1, "--batting", "moon")]
    [InlineData(2, "--bed", "twin", "--target", "60x80")]
    [InlineData(2, "--bed", "twin", "--drop", "much")]
    [InlineData(2, "--bed", "twin", "--draw-up", "11")]
    [InlineData(2)]
    public async Task A_size_that_is_none_is_refused(int exit, params string[] args) =>
        Assert.Equal(exit, (await Run.Of(["sizes", Run.Stars, .. args])).Exit);

    [Theory]
    [InlineData("no-such-folder/quilt.svg")]
    [InlineData("")]
    public async Task A_file_that_cannot_be_written_is_a_finding(string name)
    {
        // A folder that is not there, and a folder in the file's place.
        var path = Scratch.File(name);

        var run = await Run.Of("draw", Run.Stars, "--svg", path);

        Assert.Equal((1, ""), (run.Exit, run.Error));
        Assert.Contains(path, run.Output, StringComparison.Ordinal);
    }
}
