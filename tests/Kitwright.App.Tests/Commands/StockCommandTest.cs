namespace Kitwright.App.Tests.Commands;

public sealed class StockCommandTest
{
    private const string Odd = "SKU;lot;width;left;price;color\nF-1;L1;110 cm;11,5 m;12,90;#3a5f8c\n";

    private static string Database() => Scratch.File("shop.db");

    [Fact]
    public async Task A_dry_run_saves_nothing_and_the_real_run_all()
    {
        var database = Database();
        var dry = await Run.Of("stock", Run.Stock, "--into", database, "--dry-run");
        Assert.Equal((0, ""), (dry.Exit, dry.Error));
        Assert.StartsWith("This would add 65 fabrics and 90 bolts", dry.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(database));

        Assert.StartsWith("Added: 65 fabrics and 90 bolts.", (await Run.Of("stock", Run.Stock, "--into", database)).Output, StringComparison.Ordinal);
        var again = await Run.Of("stock", Run.Stock, "--into", database, "--dry-run");
        Assert.StartsWith("The shop has all of this already", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_file_says_nothing_about_stays_as_recorded()
    {
        var database = Database();
        await Run.Of("stock", Run.Stock, "--into", database);
        var path = Scratch.Written("fabric,lot,bolt,width,yards,price,color\nOB-101,L853,B001,44,14 3/4,12.10,#f6f0e4\n");

        var run = await Run.Of("stock", path, "--into", database);

        Assert.Contains("OB-101, Shell paper: price 11.80, now 12.10\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("89 bolts on record are not in the file and stay", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Columns_of_other_names_are_matched_by_hand()
    {
        var path = Scratch.Written(Odd);
        var refused = await Run.Of("stock", path, "--dry-run");
        Assert.Equal(1, refused.Exit);
        Assert.Contains("line 1: There is no column “fabric”.", refused.Output, StringComparison.Ordinal);

        var taken = await Run.Of("stock", path, "--dry-run", "--column", "fabric=SKU", "--column", "yards=left");
        Assert.Equal(0, taken.Exit);
        Assert.Contains("Bolt F-1-1 of F-1, lot L1: 12", taken.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense=SKU")]
    [InlineData("fabric")]
    public async Task A_column_that_is_none_is_a_finding(string column)
    {
        var run = await Run.Of("stock", Run.Stock, "--dry-run", "--column", column);
        Assert.Equal((1, ""), (run.Exit, run.Error));
        Assert.Contains("put-up", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_faulty_stock_file_is_refused_beside_its_line_and_makes_no_database()
    {
        foreach (var file in Directory.GetFiles(Run.File("data", "faulty", "stock"), "*.csv"))
        {
            var database = Database();
            var run = await Run.Of("stock", file, "--into", database, "--json");
            Assert.Equal((1, ""), (run.Exit, run.Error));
            Assert.NotEqual(0, run.Json.GetProperty("findings").GetArrayLength());
            Assert.False(File.Exists(database), Path.GetFileName(file));
        }
    }
}
