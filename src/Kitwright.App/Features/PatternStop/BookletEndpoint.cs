using Kitwright.Shop.Revisions;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Print.Pages;
using Kitwright.Publishing;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.App.Features.PatternStop;

/// <summary>
/// <c>GET /quilts/{slug}/booklet.pdf?colorway=NAME&amp;paper=letter|a4</c>, and <c>times</c>, <c>personal</c>, <c>fatigue</c> and <c>hand=left</c> for whoever sews: the printed pattern of a quilt as it is kept.
/// </summary>
public static class BookletEndpoint
{
    public static void MapBooklet(this WebApplication app) => app.MapGet("/quilts/{slug}/booklet.pdf", Write);

    private static IResult Write(string slug, string? colorway, string? paper, string? times, string? personal, string? fatigue, string? hand, IWorkbench workbench)
    {
        if (workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is not { } quilt)
        {
            return Results.NotFound();
        }

        var chosen = colorway is null ? quilt.Colorways.FirstOrDefault() : quilt.Colorway(colorway);
        if ((colorway is not null && chosen is null) || (paper is null ? Papers.UsualFor(quilt) : Papers.Named(paper)) is not { } size)
        {
            return Results.NotFound();
        }

        if (PublicQuilt.NoBooklet(quilt) is { } refused)
        {
            return Results.Problem(
                $"{Saying.Say(refused.Reason)} {Saying.Say(refused.Remedy)}",
                statusCode: StatusCodes.Status403Forbidden,
                title: Saying.Say("web.pattern.none")
            );
        }

        var (sewist, bad) = Sewist.Read(times, personal, fatigue, hand == "left");
        if (!bad.IsEmpty)
        {
            return Results.Problem(string.Join(' ', bad.Select(f => $"{Saying.Say(f.Reason)} {Saying.Say(f.Remedy)}")), statusCode: StatusCodes.Status422UnprocessableEntity, title: Saying.Say("web.pattern.none"));
        }

        var planned = workbench.Plan(quilt, chosen?.Name);
        if (planned.Plan is not { } plan)
        {
            var faults = planned.Findings.Where(f => f.Weight == Weight.Fault).Select(f => Saying.Say(f.Reason));
            return Results.Problem(string.Join(' ', faults), statusCode: StatusCodes.Status422UnprocessableEntity, title: Saying.Say("web.pattern.none"));
        }

        var pdf = new MemoryStream();
        Booklet.Write(quilt, plan, workbench.Shelf, size, Languages.Of(quilt, workbench.Terms), pdf, sewist);
        pdf.Position = 0;
        return Results.File(pdf, "application/pdf", FileName(slug, chosen?.Name, size));
    }

    private static string FileName(string slug, string? colorway, PaperSize paper) =>
        string.Join('-', ((string?[])[slug, colorway is null ? null : Slug.Of(colorway), paper.ToString().ToLowerInvariant()]).OfType<string>()) + ".pdf";
}
