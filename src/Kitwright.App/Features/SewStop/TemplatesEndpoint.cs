using Kitwright.App.Web;
using Kitwright.Print.Pages;

namespace Kitwright.App.Features.SewStop;

/// <summary><c>GET /quilts/{slug}/templates.pdf?paper=letter|a4</c>: templates and foundations of a quilt as it is kept.</summary>
public static class TemplatesEndpoint
{
    public static void MapTemplates(this WebApplication app) => app.MapGet("/quilts/{slug}/templates.pdf", Write);

    private static IResult Write(string slug, string? paper, IWorkbench workbench)
    {
        if (workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is not { } quilt)
        {
            return Results.NotFound();
        }

        // Letter where nothing is said; what is no paper size is not found.
        var size = PaperSize.Letter;
        if (paper is not null && !(Enum.GetNames<PaperSize>().Contains(paper, StringComparer.OrdinalIgnoreCase) && Enum.TryParse(paper, ignoreCase: true, out size)))
        {
            return Results.NotFound();
        }

        var pdf = new MemoryStream();
        TemplateBook.Write(quilt, size, pdf);
        pdf.Position = 0;
        return Results.File(pdf, "application/pdf", $"{slug}-templates-{size.ToString().ToLowerInvariant()}.pdf");
    }
}
