using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Print.Drawing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Beginning;

/// <summary>Colors that show a role's value; roles of one value differ a little.</summary>
public static class BookColors
{
    private static readonly ImmutableArray<string> Light = ["#f3ecdd", "#e8dcc2", "#dde3dd", "#efe0da"];
    private static readonly ImmutableArray<string> Medium = ["#b08a5b", "#7c97a8", "#a9a06f", "#b57f76"];
    private static readonly ImmutableArray<string> Dark = ["#2f4052", "#6b2f2a", "#3d4a34", "#4b3a52"];

    public static string Of(BookBlock block, string role) => Of(block.Roles, role);

    public static Paint PaintOf(ImmutableArray<Quilts.Role> roles, string role) => Paint.Of(Color.Parse(Of(roles, role)));

    private static string Of(ImmutableArray<Quilts.Role> roles, string id)
    {
        var value = roles.FirstOrDefault(role => role.Id == id)?.Value;
        var place = roles.Where(role => role.Value == value).Select(role => role.Id).ToList().IndexOf(id);
        var colors = value switch
        {
            Value.Light => Light,
            Value.Dark => Dark,
            _ => Medium,
        };
        return colors[Math.Max(place, 0) % colors.Length];
    }
}
