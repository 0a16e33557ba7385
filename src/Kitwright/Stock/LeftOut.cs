using Kitwright.Fabrics;

namespace Kitwright.Stock;

/// <summary>What a file says nothing about stays as it is on record.</summary>
public static class LeftOut
{
    /// <summary>The file's shelf, with what its columns leave out of known fabrics taken from the shop's.</summary>
    /// <param name="columns">The columns that the file has.</param>
    public static Shelf Kept(Shelf file, Shelf shop, StockColumns columns)
    {
        var known = shop.Fabrics.ToDictionary(fabric => fabric.Number, StringComparer.Ordinal);
        return file with
        {
            Fabrics =
            [
                .. file.Fabrics.Select(fabric => known.TryGetValue(fabric.Number, out var held) ? Kept(fabric, held, columns) : fabric),
            ],
        };
    }

    private static Fabric Kept(Fabric fabric, Fabric held, StockColumns columns)
    {
        bool Has(StockColumn column) => columns.Positions.ContainsKey(column);
        return fabric with
        {
            Name = Has(StockColumn.Name) ? fabric.Name : held.Name,
            PutUp = Has(StockColumn.PutUp) ? fabric.PutUp : held.PutUp,
            Direction = Has(StockColumn.Direction) ? fabric.Direction : held.Direction,
            RepeatAlong = Has(StockColumn.RepeatAlong) ? fabric.RepeatAlong : held.RepeatAlong,
            RepeatAcross = Has(StockColumn.RepeatAcross) ? fabric.RepeatAcross : held.RepeatAcross,
            PanelLength = Has(StockColumn.Panel) ? fabric.PanelLength : held.PanelLength,
            TwoSided = Has(StockColumn.TwoSided) ? fabric.TwoSided : held.TwoSided,
            Print = new(
                Has(StockColumn.Print) ? fabric.Print.Kind : held.Print.Kind,
                Has(StockColumn.Second) ? fabric.Print.Second : held.Print.Second,
                Has(StockColumn.Seed) ? fabric.Print.Seed : held.Print.Seed
            ),
        };
    }
}
