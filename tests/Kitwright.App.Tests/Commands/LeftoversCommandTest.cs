namespace Kitwright.App.Tests.Commands;

/// <summary>Leftovers of a shop's database by command.</summary>
public sealed class LeftoversCommandTest
{
    [Fact]
    public async Task A_list_is_booked_once_for_its_id_and_what_is_listed_can_be_read_again()
    {
        var folder = Directory.CreateTempSubdirectory("kitwright-leftovers-").FullName;
        try
        {
            var shop = Path.Combine(folder, "shop.db");
            Assert.Equal(1, (await Run.Of("leftovers", "--in", shop)).Exit);
            Assert.False(File.Exists(shop));
            Assert.Equal(0, (await Run.Of("stock", Run.Stock, "--into", shop)).Exit);
            var list = Scratch.Written("fabric,width,height,count\nOB-201,40,7 7/8,3\n");
            var id = Guid.NewGuid().ToString();
            Assert.Equal(0, (await Run.Of("leftovers", list, "--in", shop, "--id", id)).Exit);
            var again = await Run.Of("leftovers", list, "--in", shop, "--id", id);
            Assert.Equal((0, "fabric,width,height,count,from\r\nOB-201,40,7 7/8,3,\r\n"), (again.Exit, again.Output));

            Assert.Equal(0, (await Run.Of("leftovers", Scratch.Written(again.Output.Replace(",3,", ",2,", StringComparison.Ordinal)), "--in", shop, "--as", "used")).Exit);
            var refused = await Run.Of("leftovers", list, "--in", shop, "--as", "thrown-away");
            Assert.Equal(1, refused.Exit);
            Assert.Contains("Only 1 piece of OB-201, 7 7/8 × 40 in, is on the shelf, and 3 were asked for.", refused.Output, StringComparison.Ordinal);
            Assert.Equal(0, (await Run.Of("leftovers", Scratch.Written(again.Output), "--in", shop, "--as", "counted")).Exit);
            Assert.Equal(again.Output, (await Run.Of("leftovers", "--in", shop)).Output);
            Assert.Equal(2, (await Run.Of("leftovers", list, "--in", shop, "--as", "eaten")).Exit);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
