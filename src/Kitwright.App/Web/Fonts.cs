using Kitwright.Print.Fonts;

namespace Kitwright.App.Web;

/// <summary>The screen is set from the same font files as the print.</summary>
public static class Fonts
{
    public static void MapFonts(this WebApplication app)
    {
        foreach (var face in Face.All)
        {
            app.MapGet(
                $"/fonts/{face.Name}.ttf",
                (HttpResponse response) =>
                {
                    response.Headers.CacheControl = "max-age=86400";
                    return Results.Bytes(face.File.Bytes, "font/ttf");
                }
            );
        }
    }
}
