using System.Net;
using System.Text;
using Kitwright.App.Web;
using Kitwright.Fabrics;
using Kitwright.Publishing;

namespace Kitwright.App.Features.Licensing;

/// <summary>
/// <c>GET /public/{slug}</c>: what a customer sees of a quilt, as plain HTML without any script, made from its
/// <see cref="PublicQuilt"/> alone.
/// </summary>
public static class PublicPage
{
    public static void MapPublicPage(this WebApplication app) => app.MapGet("/public/{slug}", Write);

    private static IResult Write(string slug, IWorkbench workbench) =>
        workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is { } quilt
            ? Results.Content(Html(slug, PublicQuilt.Of(quilt), workbench.Shelf), "text/html; charset=utf-8")
            : Results.NotFound();

    private static string Html(string slug, PublicQuilt quilt, Shelf shelf)
    {
        var name = WebUtility.HtmlEncode(quilt.Name);
        var html = new StringBuilder();
        html.Append($"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>{name}</title>");
        foreach (var sheet in (string[])["paper", "parts", "design"])
        {
            html.Append($"<link rel=\"stylesheet\" href=\"/css/{sheet}.css\">");
        }

        html.Append($"</head><body><main class=\"public\"><h1>{name}</h1>");
        html.Append($"<p>{Encoded(quilt.Owner is { } owner ? Saying.Say("public.by", ("owner", owner)) : Saying.Say("public.own"))}</p>");
        if (quilt.Shows)
        {
            html.Append($"<img src=\"/quilts/{slug}/picture.png?width=600\" width=\"600\" alt=\"{name}\">");
        }

        html.Append("<ul>");
        foreach (var colorway in quilt.Colorways)
        {
            var fabrics = string.Join(", ", colorway.Fabrics.Select(number => shelf.Fabric(number)?.Name ?? number));
            html.Append($"<li>{Encoded(Saying.Say("public.colorway", ("name", colorway.Name), ("fabrics", fabrics)))}</li>");
        }

        return html.Append("</ul></main></body></html>").ToString();
    }

    private static string Encoded(string text) => WebUtility.HtmlEncode(text);
}
