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

    /// <summary>
    /// Colors without their prints, for pictures so small and many that a print would not be seen, only waited for:
    /// a browser paints a printed patch many times slower than a plain one.
    /// </summary>
    public static Func<string, Paint> PlainPaints(Colorway? colorway, Shelf shelf) =>
        role => Of(colorway, role, shelf) is { } fabric ? Paint.Of(Color.Parse(fabric.Color)) : ClothPattern.Bare;

    /// <summary>{role: fill}, for the module that changes the colorway at once.</summary>
    public static string Fills(Quilt quilt, Colorway? colorway, Shelf shelf) =>
        JsonSerializer.Serialize(
            quilt.Roles.ToImmutableSortedDictionary(role => role.Id, role => ClothPattern.Fill(Of(colorway, role.Id, shelf)))
        );
}
