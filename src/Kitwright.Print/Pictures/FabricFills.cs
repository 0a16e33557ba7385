using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>The fabric of each role and letter of a plan, as paint.</summary>
public sealed class FabricFills(QuiltPlan plan, Shelf shelf)
{
    private readonly Dictionary<string, PlanFabric> byRole = plan
        .Fabrics.SelectMany(fabric => fabric.Roles.Select(role => (role, fabric)))
        .ToDictionary(pair => pair.role, pair => pair.fabric, StringComparer.Ordinal);

    private readonly Dictionary<string, Paint> prints = new(StringComparer.Ordinal);

    public Paint OfRole(string role) => Of(byRole[role]);

    /// <summary>The letter under which a role stands in the swatch key.</summary>
    public string Letter(string role) => byRole[role].Letter;

    /// <summary>Its main color alone: where labels must be read, and where a print would only cost ink.</summary>
    public Color ColorOf(PlanFabric fabric) => Color.Parse(Stock(fabric)?.Color ?? fabric.Color);

    /// <summary>The print as the shelf has it; a flat color where the quilt has no colorway or the shelf no such fabric.</summary>
    public Paint Of(PlanFabric fabric)
    {
        if (Stock(fabric) is not { } stock)
        {
            return Paint.Of(ColorOf(fabric));
        }

        if (!prints.TryGetValue(stock.Number, out var paint))
        {
            paint = PrintPaint.Of(stock);
            prints.Add(stock.Number, paint);
        }

        return paint;
    }

    private Fabric? Stock(PlanFabric fabric) => fabric.Number is { } number ? shelf.Fabric(number) : null;
}
