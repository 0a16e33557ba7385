using System.Collections.Immutable;
using System.Text.Json;
using Kitwright.Fabrics;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Pictures;

/// <summary>What each role is filled with on the screen.</summary>
public static class Fills
{
    /// <summary>A fabric that is not on the shelf shows as bare paper.</summary>
    private const string Missing = "#f2efe8";

    public static string Of(string number, ImmutableArray<Fabric> fabrics) =>
        fabrics.FirstOrDefault(fabric => fabric.Number == number)?.Color ?? Missing;

    public static ImmutableSortedDictionary<string, string> By(Colorway? colorway, ImmutableArray<Fabric> fabrics) =>
        colorway is null
            ? ImmutableSortedDictionary<string, string>.Empty
            : colorway.Fabrics.ToImmutableSortedDictionary(role => role.Key, role => Of(role.Value, fabrics));

    /// <summary>{role: fill}, for the module that changes the colorway at once.</summary>
    public static string Json(Colorway colorway, ImmutableArray<Fabric> fabrics) =>
        JsonSerializer.Serialize(By(colorway, fabrics));
}
