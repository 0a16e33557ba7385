using System.Text;
using Kitwright.App.Web;
using Kitwright.Print.Pictures;
using Kitwright.Publishing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.QuiltFiles;

/// <summary>
/// <c>GET /quilts/{slug}/quilt.json</c>: the quilt as a file; <c>/picture.svg</c> and <c>/picture.png?width=N</c>: its
/// picture, in a colorway.
/// </summary>
public static class FileEndpoints
{
    private const int UsualWidth = 1_600;

    public static void MapQuiltFiles(this WebApplication app)
    {
        app.MapGet("/quilts/{slug}/quilt.json", Quilt);
        app.MapGet("/quilts/{slug}/picture.svg", Svg);
        app.MapGet("/quilts/{slug}/picture.png", Png);
    }

    private static IResult Quilt(string slug, IWorkbench workbench) =>
        Find(slug, workbench) is { } quilt
            ? Results.File(Encoding.UTF8.GetBytes(QuiltFile.Write(quilt)), "application/json", $"{slug}.json")
            : Results.NotFound();

    private static IResult Svg(string slug, string? colorway, IWorkbench workbench) =>
        Picture(slug, colorway, workbench) is { } picture
            ? Results.File(Encoding.UTF8.GetBytes(picture.Svg), "image/svg+xml", $"{slug}.svg")
            : Results.NotFound();

    private static IResult Png(string slug, string? colorway, int? width, IWorkbench workbench)
    {
        if (Picture(slug, colorway, workbench) is not { } picture)
        {
            return Results.NotFound();
        }

        var wide = width ?? UsualWidth;
        if (!picture.Fits(wide))
        {
            return Results.Problem(
                Saying.Say("picture.large", ("width", wide), ("most", PictureFile.MostPixels)),
                statusCode: StatusCodes.Status422UnprocessableEntity
            );
        }

        var png = new MemoryStream();
        picture.WritePng(wide, png);
        return Results.File(png.ToArray(), "image/png", $"{slug}.png");
    }

    private static PictureFile? Picture(string slug, string? colorway, IWorkbench workbench)
    {
        if (Find(slug, workbench) is not { } quilt)
        {
            return null;
        }

        var chosen = colorway is null ? quilt.Colorways.FirstOrDefault() : quilt.Colorway(colorway);
        return colorway is not null && chosen is null || PublicQuilt.Of(quilt) is { Shows: false }
            ? null
            : QuiltPictureFile.Of(quilt, chosen, workbench.Shelf);
    }

    private static Quilt? Find(string slug, IWorkbench workbench) => workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt;
}
