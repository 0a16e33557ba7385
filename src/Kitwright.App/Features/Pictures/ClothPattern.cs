using System.Globalization;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Kitwright.Fabrics;
using Kitwright.Fabrics.Prints;
using Kitwright.Print.Drawing;

namespace Kitwright.App.Features.Pictures;

/// <summary>
/// Fabrics as SVG paint servers, defined once on a page in inches of cloth; pictures in inches name them, so that a
/// colorway is changed by changing a name.
/// </summary>
public static class ClothPattern
{
    private static readonly ConditionalWeakTable<Fabric, string> Versions = [];

    /// <summary>Bare paper, for a role without a fabric.</summary>
    public static Paint Bare { get; } = Paint.Of(Color.Parse("#efebe2"));

    public static Paint Named(Fabric? fabric) =>
        fabric is null ? Bare : new NamedPaint(Name(fabric), Color.Parse(fabric.Color));

    /// <summary>The same as the value of a fill attribute.</summary>
    public static string Fill(Fabric? fabric) => fabric is null ? "#efebe2" : $"url(#{Name(fabric)}) {fabric.Color}";

    private static string Name(Fabric fabric) =>
        "cloth-" + string.Concat(fabric.Number.Select(c => char.IsAsciiLetterOrDigit(c) ? $"{c}" : $"_{(int)c:x}"));

    /// <summary>The name with what it is drawn from: the same text is the same picture, in any session of this build.</summary>
    public static string Version(Fabric fabric) => Versions.GetValue(fabric, Versioned);

    private static string Versioned(Fabric fabric)
    {
        var drawn = $"{typeof(PrintTile).Module.ModuleVersionId} {typeof(ClothPattern).Module.ModuleVersionId} {fabric}";
        return $"{Name(fabric)}.{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(drawn)).AsSpan(0, 8))}";
    }

    /// <summary>A <c>pattern</c> element for each of the fabrics.</summary>
    public static string Definitions(IEnumerable<Fabric> fabrics)
    {
        var svg = new StringBuilder();
        foreach (var fabric in fabrics)
        {
            var tile = PrintTile.Of(fabric);
            // Tiles are in thousandths of an inch.
            svg.Append(
                CultureInfo.InvariantCulture,
                $"""<pattern id="{Name(fabric)}" patternUnits="userSpaceOnUse" width="{tile.Width}" height="{tile.Height}" patternTransform="scale(.001)"><rect width="{tile.Width}" height="{tile.Height}" fill="{tile.Background}"/>"""
            );
            foreach (var shape in tile.Shapes)
            {
                Append(svg, shape);
            }

            svg.Append("</pattern>");
        }

        return svg.ToString();
    }

    private static void Append(StringBuilder svg, TileShape shape)
    {
        switch (shape)
        {
            case TileCircle circle:
                svg.Append(CultureInfo.InvariantCulture, $"""<circle cx="{circle.X}" cy="{circle.Y}" r="{circle.Radius}" """);
                break;
            case TileRectangle box:
                svg.Append(CultureInfo.InvariantCulture, $"""<rect x="{box.X}" y="{box.Y}" width="{box.Width}" height="{box.Height}" """);
                break;
            case TilePath path:
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{path.Start.X} {path.Start.Y}");
                foreach (var (first, second, end) in path.Curves)
                {
                    svg.Append(CultureInfo.InvariantCulture, $"C{first.X} {first.Y} {second.X} {second.Y} {end.X} {end.Y}");
                }

                svg.Append("Z\" ");
                break;
        }

        svg.Append($"fill=\"{shape.Color}\"/>");
    }
}
