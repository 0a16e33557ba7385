using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Print.Pages;
using Kitwright.Shop.Revisions;

namespace Kitwright.App.Features.KitsStop;

/// <summary>
/// <c>GET /quilts/{slug}/bag.pdf?form=yardage|strip-cut|fully-cut&amp;colorway=NAME&amp;paper=letter|a4</c>: the sheets of
/// one kit of a quilt as it is kept.
/// </summary>
public static class BagEndpoint
{
    public static void MapBag(this WebApplication app) => app.MapGet("/quilts/{slug}/bag.pdf", Write);

    private static IResult Write(string slug, string? form, string? colorway, string? paper, IWorkbench workbench)
    {
        if (workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is not { } quilt)
        {
            return Results.NotFound();
        }

        var chosen = colorway is null ? quilt.Colorways.FirstOrDefault() : quilt.Colorway(colorway);
        if (
            (colorway is not null && chosen is null)
            || BagPrint.FormOf(form) is not { } asked
            || (paper is null ? Papers.UsualFor(quilt) : Papers.Named(paper)) is not { } size
        )
        {
            return Results.NotFound();
        }

        var planned = workbench.Plan(quilt, chosen?.Name);
        var language = Languages.Of(quilt, workbench.Terms);
        var printed = BagPrint.Of(quilt, planned.Plan, asked, workbench.Shelf, size, language);
        if (printed.Value is { } pdf)
        {
            var name = string.Join('-', ((string?[])[slug, chosen is null ? null : Slug.Of(chosen.Name), BagSheets.NameOf(asked)]).OfType<string>());
            return Results.File(pdf, "application/pdf", $"{name}.pdf");
        }

        var why = printed.Findings.Concat(planned.Findings.Where(f => f.Weight == Weight.Fault)).Select(f => $"{language.Say(f.Reason)} {language.Say(f.Remedy)}");
        return Results.Problem(
            string.Join(' ', why),
            statusCode: printed.Findings.IsEmpty ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status403Forbidden,
            title: language.Say("bag.none")
        );
    }
}
