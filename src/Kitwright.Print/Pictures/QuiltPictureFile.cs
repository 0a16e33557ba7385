using Kitwright.Fabrics;
using Kitwright.Piecing;
using Kitwright.Print.Drawing;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Print.Pictures;

/// <summary>The quilt's picture as a file of its own, with the prints of its fabrics in it.</summary>
public static class QuiltPictureFile
{
    private const double LicensedWidth = 1_000;

    /// <param name="colorway">Null, or with a fabric that the shelf lacks: paper grays by the role's value.</param>
    public static PictureFile Of(Quilt quilt, Colorway? colorway, Shelf shelf)
    {
        var design = Layout.Of(quilt);
        // A picture in inches tells the quilt's size to whoever opens the file; somebody else's pattern is drawn to no scale.
        var scale = quilt.Licensed is null ? 1 : LicensedWidth / design.Width.InInches.ToDouble();
        return new(
            new Group([QuiltPicture.Of(design, Fill(quilt, colorway, shelf), Look.Seam)]) { Transform = Affine.Scale(scale, scale) },
            new(0, 0, design.Width.InInches.ToDouble() * scale, design.Height.InInches.ToDouble() * scale),
            Catalog.English.Say("picture.quilt", ("quilt", quilt.Name), ("colorway", colorway?.Name ?? "none"))
        );
    }

    private static Func<string, Paint> Fill(Quilt quilt, Colorway? colorway, Shelf shelf)
    {
        var paints = quilt.Roles.ToDictionary(
            role => role.Id,
            role =>
                colorway?.Fabrics.GetValueOrDefault(role.Id) is { } number && shelf.Fabric(number) is { } fabric
                    ? PrintPaint.Of(fabric)
                    : Paint.Of(Color.Parse(PlainColors.Of(role)))
        );
        return role => paints[role];
    }
}
