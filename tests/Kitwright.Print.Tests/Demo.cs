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

    /// <summary>Sashed stars with geese.</summary>
    public const string Stars = "ostrel-bay-stars";

    public static Quilt Quilt { get; } = Read(Stars);

    public static Shelf Shelf { get; } = ReadShelf();

    public static Quilt Read(string name) =>
        QuiltFile.Read(File.ReadAllText(Path.Combine(Root, "examples", "quilts", name + ".json"))).Value!;

    /// <summary>Planned by first fit.</summary>
    /// <param name="colorway">By number; −1 for none.</param>
    public static QuiltPlan Plan(Quilt quilt, int colorway) =>
        QuiltPlanner
            .Plan(quilt, colorway < 0 ? null : quilt.Colorways[colorway], Shelf.Fabrics, PlanOptions.Usual, FirstFit.Plan)
            .Value!;

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
