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
            PutUp = Known(row.PutUpTicks),
            Direction = row.Direction,
            RepeatAlong = Known(row.RepeatAlongTicks),
            RepeatAcross = Known(row.RepeatAcrossTicks),
            PanelLength = Known(row.PanelTicks),
            TwoSided = row.TwoSided,
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
        row.Direction = fabric.Direction;
        row.RepeatAlongTicks = fabric.RepeatAlong?.InTicks();
        row.RepeatAcrossTicks = fabric.RepeatAcross?.InTicks();
        row.PanelTicks = fabric.PanelLength?.InTicks();
        row.TwoSided = fabric.TwoSided;
    }

    private static Length? Known(long? ticks) => ticks is { } held ? Length.Ticks(held) : null;
}
