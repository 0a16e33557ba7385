using Kitwright.App.Web;

namespace Kitwright.App.Features.Pictures;

/// <summary>
/// <c>GET /cloths.svg?of=NAME.VERSION,…</c>: the prints of those fabrics as SVG <c>pattern</c> elements. A version stands
/// for one print for ever, so that a browser keeps what it has; a version that the shelf does not hold is left out.
/// </summary>
public static class ClothsEndpoint
{
    public static void MapCloths(this WebApplication app) => app.MapGet("/cloths.svg", Write);

    private static IResult Write(string of, IWorkbench workbench, HttpResponse response)
    {
        var wanted = of.Split(',').ToHashSet(StringComparer.Ordinal);
        var fabrics = workbench.Shelf.Fabrics.Where(fabric => wanted.Contains(ClothPattern.Version(fabric))).ToList();
        // An answer with a gap may be whole the next time.
        response.Headers.CacheControl = fabrics.Count == wanted.Count ? "private, max-age=31536000, immutable" : "no-store";
        return Results.Text($"""<svg xmlns="http://www.w3.org/2000/svg">{ClothPattern.Definitions(fabrics)}</svg>""", "image/svg+xml");
    }
}
