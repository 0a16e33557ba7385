using System.Globalization;

namespace Kitwright.Print.Drawing;

/// <summary>A fabric as it lies in one part of a drawing.</summary>
/// <param name="Transform">From inches of cloth to the drawing.</param>
internal readonly record struct PlacedTile(TilePaint Paint, Affine Transform)
{
    /// <summary>Differs between places where the same fabric is drawn larger or begins elsewhere.</summary>
    public string Name =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Paint.Key}-{Math.Round(Transform.Factor * 1000)}-{Math.Round(Transform.E * 10)}-{Math.Round(Transform.F * 10)}"
        );
}

/// <summary>Finds the printed fabrics of a drawing.</summary>
internal static class Tiles
{
    public static IEnumerable<PlacedTile> In(Node node, Affine transform) =>
        node switch
        {
            Group group => group.Nodes.SelectMany(child => In(child, group.Transform.Then(transform))),
            Shape { Fill: TilePaint tile } => [new(tile, transform)],
            _ => [],
        };
}
