using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Shop.Rows;

namespace Kitwright.Shop.Ledger;

/// <summary>Fabrics between records and rows.</summary>
internal static class FabricRows
{
    public static Fabric Read(FabricRow row) =>
        new(row.Number, row.Name, Length.Ticks(row.WidthTicks), row.PricePerYard, row.Color, new(row.Print, row.Second, row.Seed))
        {
            PutUp = row.PutUpTicks is { } ticks ? Length.Ticks(ticks) : null,
        };

    public static FabricRow New(Fabric fabric, bool demo)
    {
        var row = new FabricRow
        {
            Number = fabric.Number,
            Name = "",
            WidthTicks = 0,
            PricePerYard = 0,
            Color = "",
            Print = PrintKind.Solid,
            Second = "",
            Seed = 0,
            PutUpTicks = null,
            Demo = demo,
        };
        Write(fabric, row);
        return row;
    }

    public static void Write(Fabric fabric, FabricRow row)
    {
        row.Name = fabric.Name;
        row.WidthTicks = fabric.Width.InTicks();
        row.PricePerYard = fabric.PricePerYard;
        row.Color = fabric.Color;
        row.Print = fabric.Print.Kind;
        row.Second = fabric.Print.Second;
        row.Seed = fabric.Print.Seed;
        row.PutUpTicks = fabric.PutUp?.InTicks();
    }
}
