using System.Globalization;
using System.Text.Json;

namespace Kitwright.App.Tests.Commands;

/// <summary>Lists of pieces through the plain door: what comes back is counted and measured here, not believed.</summary>
public sealed class CutCommandTest
{
    private const string Header = "label,width,height,count,turn\n";

    [Fact]
    public async Task Squares_of_a_chart_come_out_of_the_width()
    {
        // 16 squares of 2 1/2 in across 40 in: 80 squares are 5 strips, 12 1/2 in.
        var run = await Cut(Header + "A1,2 1/2,2.5,80,no\n", "--width", "40");

        Assert.Equal(0, run.Exit);
        var cut = run.Json.GetProperty("cut");
        Assert.Equal("12 1/2", cut.GetProperty("length").GetString());
        Assert.Equal("12 1/2", cut.GetProperty("bound").GetString());
        Assert.Equal("proved", cut.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, cut.GetProperty("purchase").ValueKind);
    }

    [Fact]
    public async Task Allowances_are_nothing_unless_given()
    {
        const string list = Header + "A1,10 1/2,10 1/2,8,no\n";
        async Task<string?> Length(params string[] options) =>
            (await Cut(list, [.. options])).Json.GetProperty("cut").GetProperty("length").GetString();

        Assert.Equal("21", await Length("--width", "42"));
        // Four of 10 1/2 in do not come out of 42 in when squaring the end of the strip takes something.
        Assert.Equal("31 1/2", await Length("--width", "42", "--trim", "1/2"));
        Assert.Equal("21 1/2", await Length("--width", "42", "--straightening", "1/2"));
    }

    [Fact]
    public async Task The_purchase_is_a_step_and_is_made_least_where_steps_are_given()
    {
        var run = await Cut(Header + "A1,2 1/2,2 1/2,80,no\n", "--width", "40", "--increment", "4 1/2", "--increment", "12");

        Assert.Equal("13 1/2", run.Json.GetProperty("cut").GetProperty("purchase").GetString());
    }

    [Fact]
    public async Task With_a_unit_all_measures_are_whole_numbers()
    {
        var run = await Cut("label;height;width;count\np;3;4;6\n", "--width", "9", "--unit");

        Assert.Equal(9, run.Json.GetProperty("cut").GetProperty("length").GetInt32());
        Assert.Equal(3, run.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("strips")[0].GetProperty("height").GetInt32());
    }

    [Fact]
    public async Task A_fraction_among_whole_numbers_of_a_unit_is_refused_by_line()
    {
        var run = await Cut("label,width,height,count\np,3 1/2,4,6\nq,3,4,6\n", "--width", "9", "--unit", "1/16");

        Assert.Equal(1, run.Exit);
        Assert.Equal([("cutlist.whole", "line 2")], Findings(run));
        Assert.Equal(8, run.Json.GetProperty("cut").GetProperty("length").GetInt32());
    }

    /// <summary>Own arithmetic: 6 1/2 by 3 1/2 in takes 8 by 6 in of the print, five to a strip; the rest follows as it comes.</summary>
    [Fact]
    public async Task Matched_pieces_are_cut_from_whole_repeats()
    {
        var run = await Cut("label,width,height,count,turn,match\nA1,6 1/2,3 1/2,30,yes,yes\nA2,2 1/2,2 1/2,40,yes,\n", "--width", "40", "--repeat-along", "6", "--repeat-across", "8");

        Assert.Equal(0, run.Exit);
        var cut = run.Json.GetProperty("cut");
        Assert.Equal(("43 1/2", "43 1/2"), (cut.GetProperty("length").GetString(), cut.GetProperty("bound").GetString()));
        var strips = cut.GetProperty("cloths")[0].GetProperty("strips").EnumerateArray().ToArray();
        Assert.Equal(("6", 6), (strips[0].GetProperty("height").GetString(), strips[0].GetProperty("times").GetInt32()));
        var sub = Assert.Single(strips[0].GetProperty("subCuts").EnumerateArray());
        Assert.Equal(("6 1/2", "3 1/2", "8", 5, 2, false), (sub.GetProperty("width").GetString(), sub.GetProperty("height").GetString(), sub.GetProperty("cutWidth").GetString(), sub.GetProperty("times").GetInt32(), sub.GetProperty("trims").GetInt32(), sub.GetProperty("turned").GetBoolean()));
        // As if all were matched: 40 of the small ones take 8 strips of 5 as well.
        var all = await Cut("label,width,height,count\nA1,6 1/2,3 1/2,30\nA2,2 1/2,2 1/2,40\n", "--width", "40", "--repeat-along", "6", "--repeat-across", "8", "--match");
        Assert.Equal("84", all.Json.GetProperty("cut").GetProperty("length").GetString());
    }

    [Fact]
    public async Task Panels_are_taken_whole_and_no_strip_goes_over_one()
    {
        // Three strips of 14 in: by length two panels of 24 in would do, and each holds one strip only.
        var run = await Cut(Header + "A1,20,14,6,no\n", "--width", "40", "--panel", "24");

        var cut = run.Json.GetProperty("cut");
        Assert.Equal((3, 2, "72", "within"), (cut.GetProperty("sheets").GetInt32(), cut.GetProperty("sheetsBound").GetInt32(), cut.GetProperty("length").GetString(), cut.GetProperty("status").GetString()));
        Assert.Equal(3, cut.GetProperty("cloths").EnumerateArray().Sum(panel => panel.GetProperty("times").GetInt32()));
        // A piece that fits a panel one way round only lies so.
        var lying = await Cut(Header + "A1,20,30,4,yes\n", "--width", "40", "--panel", "24");
        Assert.True(lying.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("strips")[0].GetProperty("subCuts")[0].GetProperty("turned").GetBoolean());
    }

    [Theory]
    [InlineData("cutting.over-panel", "line 2", "--panel", "4")]
    [InlineData("cutlist.match-nothing", "line 2", "--match")]
    [InlineData("cutlist.repeat-too-wide", "--repeat-across", "--match", "--repeat-across", "50")]
    public async Task What_a_print_does_not_allow_is_a_finding(string rule, string place, params string[] options)
    {
        var run = await Cut(Header + "A1,4,5,6,no\n", ["--width", "40", .. options]);

        Assert.Equal([(rule, place)], Findings(run));
    }

    [Theory]
    [InlineData("--repeat-along", "0")]
    [InlineData("--panel", "0")]
    [InlineData("--panel", "24", "--straightening", "1")]
    [InlineData("--panel", "24", "--repeat-along", "6")]
    [InlineData("--panel", "24", "--stages", "3")]
    [InlineData("--match", "--fold", "2")]
    public async Task Options_of_a_print_that_do_not_go_together_are_refused(params string[] options) =>
        Assert.NotEqual(0, (await Cut(Header + "A1,4,5,6,no\n", ["--width", "40", .. options])).Exit);

    [Fact]
    public async Task A_piece_wider_than_the_cloth_is_named_and_the_rest_planned()
    {
        var run = await Cut(Header + "wide,41,3,2,no\nA1,2 1/2,2 1/2,16,no\n", "--width", "40");

        Assert.Equal(1, run.Exit);
        Assert.Equal([("cutting.too-wide-unturned", "line 2")], Findings(run));
        Assert.Contains("wide", run.Json.GetProperty("findings")[0].GetProperty("remedy").GetString()!, StringComparison.Ordinal);
        Assert.Equal("2 1/2", run.Json.GetProperty("cut").GetProperty("length").GetString());
    }

    [Theory]
    [InlineData("", "cutlist.empty", "line 1")]
    [InlineData("label,width,height\nA,1,1\n", "cutlist.column-missing", "line 1")]
    [InlineData("label,width,width,height,count\nA,1,1,1,1\n", "cutlist.column-twice", "line 1")]
    [InlineData("label,width,height,count\n,1,1,1\n", "cutlist.label", "line 2")]
    [InlineData("label,width,height,count\nA,one,1,1\n", "cutlist.measure", "line 2")]
    [InlineData("label,width,height,count\nA,-1,1,1\n", "cutlist.not-above-zero", "line 2")]
    [InlineData("label,width,height,count\nA,1,1,2.5\n", "cutlist.count", "line 2")]
    [InlineData("label,width,height,count\nA,1,1,99999999999\n", "cutlist.count", "line 2")]
    [InlineData("label,width,height,count,turn\nA,1,1,1,perhaps\n", "cutlist.turn", "line 2")]
    [InlineData("label,width,height,count\nA,10 in,10 cm,1\n", "cutlist.mixed-units", "line 2")]
    [InlineData("label,width,height,count\nA,10,10,1\nB,10 cm,10 cm,1\n", "cutlist.mixed-units", "line 3")]
    [InlineData("label,width,height,count\nA,1,1,20000000\n", "cutting.count", "line 2")]
    [InlineData("label,width,height,count\nA,\"1,1,1\n", "stock.unclosed-quote", "line 2")]
    public async Task What_is_wrong_with_a_list_stands_beside_its_line(string list, string rule, string place)
    {
        var run = await Cut(list, "--width", "40");

        Assert.Equal((1, ""), (run.Exit, run.Error));
        Assert.Contains((rule, place), Findings(run));
    }

    [Fact]
    public async Task A_million_pieces_and_ten_thousand_kinds_are_planned()
    {
        var many = await Cut(Header + "A1,2 1/2,2 1/2,1000000,yes\n", "--width", "40");
        // 16 in a strip: 62,500 strips.
        Assert.Equal("156250", many.Json.GetProperty("cut").GetProperty("length").GetString());

        var kinds = string.Concat(Enumerable.Range(0, 10_000).Select(i => string.Create(CultureInfo.InvariantCulture, $"k{i},{1 + (i % 97)},{1 + (i / 97)},1\n")));
        var run = await Cut("label,width,height,count\n" + kinds, "--width", "97", "--unit");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Equal(10_000, PiecesIn(run.Json.GetProperty("cut")).Values.Sum());
    }

    [Theory]
    [InlineData("--width", "0")]
    [InlineData("--width", "40", "--unit", "0")]
    [InlineData("--width", "40 1/2", "--unit")]
    [InlineData("--width", "40", "--goal", "purchase")]
    [InlineData("--width", "40", "--seconds", "0")]
    [InlineData("--width", "40", "--straightening", "-1")]
    [InlineData("--width", "40", "--cloth", "cloth.csv")]
    [InlineData("--width", "40", "--first-cut", "along")]
    [InlineData("--width", "40", "--goal", "sheets")]
    [InlineData("--width", "40", "--stages", "4")]
    [InlineData("--cloth", "cloth.csv", "--fold", "2")]
    [InlineData("--cloth", "cloth.csv", "--goal", "length")]
    [InlineData]
    public async Task Wrong_options_answer_2(params string[] options) => Assert.Equal(2, (await Cut(Header, options)).Exit);

    [Fact]
    public async Task A_third_stage_stacks_pieces_under_a_long_one()
    {
        const string list = Header + "long,10,30,1,no\nshort,10,10,9,no\n";
        async Task<string?> Length(params string[] options) =>
            (await Cut(list, ["--width", "40", .. options])).Json.GetProperty("cut").GetProperty("length").GetString();

        // Two stages: three short ones beside the long one, trimmed, and two strips more. Three stages: all beside it.
        Assert.Equal("50", await Length());
        Assert.Equal("30", await Length("--stages", "3"));
        Assert.Equal("30", await Length("--stages", "3", "--last-cut", "homogeneous"));
    }

    [Fact]
    public async Task Layers_cut_pairs_and_what_a_fold_gives_beyond_is_stated()
    {
        var run = await Cut(Header + "A,5,4,7,no\n", "--width", "40", "--fold", "2");

        var strip = run.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("strips")[0];
        Assert.Equal((2, "4"), (strip.GetProperty("layers").GetInt32(), strip.GetProperty("height").GetString()));
        Assert.Equal(4, strip.GetProperty("subCuts")[0].GetProperty("times").GetInt32());
    }

    [Fact]
    public async Task Pieces_of_cloth_are_touched_as_few_as_can_be()
    {
        var cloth = Scratch.Written("label,width,height,count\nquarter,22,18,3\nscrap,8,8,4\n");
        var run = await Cut(Header + "A,4 1/2,4 1/2,20,no\n", "--cloth", cloth, "--goal", "sheets");

        Assert.Equal(0, run.Exit);
        var cut = run.Json.GetProperty("cut");
        // Sixteen of 4 1/2 in come out of a fat quarter, one out of a scrap.
        Assert.Equal((2, 2, "proved"), (cut.GetProperty("sheets").GetInt32(), cut.GetProperty("sheetsBound").GetInt32(), cut.GetProperty("status").GetString()));
        Assert.Equal(20, PiecesIn(cut)["A"]);
    }

    [Fact]
    public async Task Where_cloth_is_short_the_missing_pieces_are_named()
    {
        var cloth = Scratch.Written("label,width,height\nquarter,22,18\n");
        var run = await Cut(Header + "A,4 1/2,4 1/2,20,no\nB,30,2,1,yes\n", "--cloth", cloth, "--goal", "sheets");

        Assert.Equal(1, run.Exit);
        Assert.Equal([("sheets.too-large", "line 3"), ("cutlist.short", "line 2")], Findings(run));
        var missing = run.Json.GetProperty("cut").GetProperty("short")[0];
        Assert.Equal(("A", 4), (missing.GetProperty("label").GetString(), missing.GetProperty("count").GetInt32()));
    }

    [Fact]
    public async Task A_piece_comes_from_the_cloth_that_it_names()
    {
        var cloth = Scratch.Written("label,width,height\nred,10,10\nblue,10,10\n");
        var run = await Cut("label,width,height,count,cloth\nA,5,5,2,Blue\nB,5,5,1,green\n", "--cloth", cloth);

        Assert.Equal([("cutlist.cloth-unknown", "line 3")], Findings(run));
        Assert.Equal("blue", run.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("cloth").GetString());
    }

    [Fact]
    public async Task Leftovers_are_listed_where_they_are_asked_for()
    {
        const string list = Header + "A,10,5,3,no\n";
        var plain = await Cut(list, "--width", "40");
        Assert.Equal(0, plain.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("leftovers").GetArrayLength());

        // Three of four places of the strip are filled, and 13 in are left of half a yard.
        var run = await Cut(list, "--width", "40", "--increment", "18", "--keep", "2 1/2");
        var left = run.Json.GetProperty("cut").GetProperty("cloths")[0].GetProperty("leftovers").EnumerateArray().ToList();
        Assert.Equal(["13 x 40", "5 x 10"], left.Select(l => $"{l.GetProperty("length").GetString()} x {l.GetProperty("width").GetString()}"));
    }

    [Fact]
    public async Task Equal_limits_of_work_give_equal_plans()
    {
        const string list = Header + "a,3,7,31,yes\nb,5,11,17,yes\nc,6 1/2,4 1/8,23,yes\nd,9,2 3/8,41,yes\n";
        var runs = new List<string>();
        for (var i = 0; i < 2; i++)
        {
            var cut = (await Cut(list, "--width", "40", "--work", "20000000")).Json.GetProperty("cut");
            runs.Add(cut.GetProperty("cloths").GetRawText() + cut.GetProperty("work").GetRawText());
        }

        Assert.Equal(runs[0], runs[1]);
    }

    [Fact]
    public async Task The_sheet_reads_as_instructions_with_the_usual_cautions()
    {
        var run = await Run.Of("cut", Scratch.Written(Header + "A1,2 1/2,2 1/2,80,no\nA2,3,5,9,no\n"), "--width", "40", "--straightening", "1/2");

        Assert.Contains("Square one end", run.Output, StringComparison.Ordinal);
        Assert.Contains("Cut 5 strips of 2 1/2; from each", run.Output, StringComparison.Ordinal);
        Assert.Contains("16 of 2 1/2 × 2 1/2 (A1)", run.Output, StringComparison.Ordinal);
        Assert.Contains("Close the guard after each cut", run.Output, StringComparison.Ordinal);
    }

    /// <summary>
    /// Instances with known least heights (two stages, trimming, no turning), with the heights of the table; the pieces are
    /// counted, each strip is measured, and the bound never passes the least height.
    /// </summary>
    [Theory]
    [InlineData("hifi1997a/2", 129)]
    [InlineData("hifi1997a/3", 1466)]
    public async Task Published_instances_are_cut_in_the_least_height(string instance, int least)
    {
        var folder = Run.File("..", "shared", "checks", "cutting", "twodim");
        Assert.SkipUnless(Directory.Exists(folder), "skipped: data absent");
        var items = File.ReadAllLines(Path.Combine(folder, instance + "_items.csv")).Select(l => l.Split(',')).ToList();
        var width = int.Parse(File.ReadAllLines(Path.Combine(folder, instance + "_bins.csv"))[1].Split(',')[1], CultureInfo.InvariantCulture);
        var copies = items[0].IndexOf("COPIES");
        var wanted = items.Skip(1).ToDictionary(i => i[0], i => copies < 0 ? 1 : int.Parse(i[copies], CultureInfo.InvariantCulture));
        var list = "label,width,height,count\n" + string.Concat(items.Skip(1).Select(i => $"{i[0]},{i[1]},{i[2]},{wanted[i[0]]}\n"));

        var cut = (await Cut(list, "--width", width.ToString(CultureInfo.InvariantCulture), "--unit", "--seconds", "20")).Json.GetProperty("cut");

        Assert.Equal(least, cut.GetProperty("length").GetInt32());
        Assert.True(cut.GetProperty("bound").GetInt32() <= least);
        Assert.Equal(wanted, PiecesIn(cut));
        var strips = cut.GetProperty("cloths")[0].GetProperty("strips").EnumerateArray().ToList();
        Assert.Equal(least, strips.Sum(s => s.GetProperty("height").GetInt32() * s.GetProperty("times").GetInt32()));
        Assert.All(
            strips,
            strip =>
            {
                var cuts = strip.GetProperty("subCuts").EnumerateArray().ToList();
                Assert.True(cuts.Sum(c => c.GetProperty("width").GetInt32() * c.GetProperty("times").GetInt32()) <= width);
                Assert.True(cuts.All(c => c.GetProperty("height").GetInt32() <= strip.GetProperty("height").GetInt32()));
            }
        );
    }

    private static Task<Run> Cut(string list, params string[] options) =>
        Run.Of(["cut", Scratch.Written(list), "--json", .. options]);

    private static List<(string, string)> Findings(Run run) =>
        [
            .. run
                .Json.GetProperty("findings")
                .EnumerateArray()
                .Select(f => (f.GetProperty("rule").GetString()!, f.GetProperty("place").GetString()!)),
        ];

    private static Dictionary<string, int> PiecesIn(JsonElement cut) =>
        cut.GetProperty("cloths")
            .EnumerateArray()
            .SelectMany(cloth => cloth.GetProperty("strips").EnumerateArray().Select(s => (Strip: s, Cloths: cloth.GetProperty("times").GetInt32())))
            .SelectMany(s => s.Strip.GetProperty("subCuts").EnumerateArray().Select(c => (Cut: c, Strips: s.Cloths * s.Strip.GetProperty("times").GetInt32())))
            .GroupBy(c => c.Cut.GetProperty("label").GetString()!)
            .ToDictionary(same => same.Key, same => same.Sum(c => c.Strips * c.Cut.GetProperty("times").GetInt32()));
}
