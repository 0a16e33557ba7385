using System.Collections.Immutable;
using System.Text.Json;
using Kitwright.Fabrics;
using Kitwright.Print.Drawing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Pictures;

/// <summary>The fabrics of a quilt's colorways.</summary>
public static class QuiltCloths
{
    public static IEnumerable<Fabric> Of(Quilt quilt, Shelf shelf) =>
        quilt.Colorways.SelectMany(colorway => Of(quilt, colorway, shelf)).DistinctBy(fabric => fabric.Number);

    /// <summary>Each once, in the order of the quilt's roles.</summary>
    public static IEnumerable<Fabric> Of(Quilt quilt, Colorway colorway, Shelf shelf) =>
        quilt.Roles.Select(role => Of(colorway, role.Id, shelf)).OfType<Fabric>().DistinctBy(fabric => fabric.Number);

    public static Fabric? Of(Colorway? colorway, string role, Shelf shelf) =>
        colorway?.Fabrics.GetValueOrDefault(role) is { } number ? shelf.Fabric(number) : null;

    public static Func<string, Paint> Paints(Colorway? colorway, Shelf shelf) => role => ClothPattern.Named(Of(colorway, role, shelf));

    /// <summary>{role: fill}, for the module that changes the colorway at once.</summary>
    public static string Fills(Quilt quilt, Colorway? colorway, Shelf shelf) =>
        JsonSerializer.Serialize(
            quilt.Roles.ToImmutableSortedDictionary(role => role.Id, role => ClothPattern.Fill(Of(colorway, role.Id, shelf)))
        );
}
