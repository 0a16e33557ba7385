using Kitwright.App.Web;
using Kitwright.Print.Pages;
using Kitwright.Publishing;

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

        if ((paper is null ? Papers.UsualFor(quilt) : Papers.Named(paper)) is not { } size)
        {
            return Results.NotFound();
        }

        if (PublicQuilt.NoTemplates(quilt) is { } refused)
        {
            return Results.Problem(
                $"{Saying.Say(refused.Reason)} {Saying.Say(refused.Remedy)}",
                statusCode: StatusCodes.Status403Forbidden,
                title: Saying.Say("web.pattern.none")
            );
        }

        var pdf = new MemoryStream();
        TemplateBook.Write(quilt, size, pdf, Languages.Of(quilt, workbench.Terms));
        pdf.Position = 0;
        return Results.File(pdf, "application/pdf", $"{slug}-templates-{size.ToString().ToLowerInvariant()}.pdf");
    }
}
