using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Quilts;
using Kitwright.Stock;

namespace Kitwright.Print.Tests;

/// <summary>The demo quilt and shelf, as the repository carries them.</summary>
internal static class Demo
{
    public static string Root { get; } = FindRoot();

    public static Quilt Quilt { get; } =
        QuiltFile.Read(File.ReadAllText(Path.Combine(Root, "examples", "quilts", "ostrel-bay-stars.json"))).Value!;

    public static Shelf Shelf { get; } = ReadShelf();

    /// <summary>Planned by first fit.</summary>
    public static QuiltPlan Plan(int colorway) =>
        QuiltPlanner.Plan(Quilt, Quilt.Colorways[colorway], Shelf.Fabrics, PlanOptions.Usual, FirstFit.Plan).Value!;

    /// <summary>Some color for a role, always the same.</summary>
    public static Paint Fill(string role) => Paint.Of(new((byte)(role.Length * 20), (byte)(role[0] * 2), 120));

    private static Shelf ReadShelf()
    {
        using var stock = File.OpenRead(Path.Combine(Root, "examples", "stock.csv"));
        return StockCsv.Read(stock).Value!;
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
