using System.Collections.Immutable;
using System.Text;
using Kitwright.App.Commands;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Pages;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>What is made of a quilt besides its plan: its accuracy, its picture, its templates, its cutting from a stash.</summary>
internal static class MadeVerbs
{
    private const int UsualQuilts = 10_000;
    private const int UsualPixels = 1_200;

    /// <summary>How large blocks and top are likely to come out.</summary>
    public static IResult Accuracy(Checked<Quilt> quilt, AccuracyQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var quilts = query.Quilts ?? UsualQuilts;
        if (quilts is < AccuracyCommand.LeastQuilts or > AccuracyCommand.MostQuilts)
        {
            return Bad("quilts", $"{quilts}", $"{AccuracyCommand.LeastQuilts}–{AccuracyCommand.MostQuilts}");
        }

        var planned = QuiltVerbs.Planned(quilt, query.Plan, workbench, cancel);
        var (test, most, bad) = AccuracyCommand.Read(query.Across, query.Middle, query.Tolerance, quilt.Value?.Units ?? LengthUnit.Inch, quilt.Value?.Seam ?? Length.Inches(0, 1, 4));
        return planned.Plan is { } plan && bad.IsEmpty
            ? ApiAnswer.Json(AccuracyCommand.Answer(plan, test, quilts, planned.Findings, Languages.Of(quilt.Value!, workbench.Terms), most))
            : ApiAnswer.Refused([.. planned.Findings, .. bad]);
    }

    /// <summary>The quilt's picture as SVG, or as PNG where a width is asked for.</summary>
    public static IResult Draw(Checked<Quilt> quilt, DrawQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        if (quilt.Value is not { } found)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        var (colorway, unknown) = Inputs.Find(found, query.Colorway);
        if (unknown.Length > 0)
        {
            return ApiAnswer.Refused(unknown);
        }

        var picture = QuiltPictureFile.Of(found, colorway, workbench.Shelf);
        switch (query.As)
        {
            case null or "svg":
                return Results.File(Encoding.UTF8.GetBytes(picture.Svg), "image/svg+xml");
            case "png":
                var width = query.Width ?? UsualPixels;
                if (width is < PictureFile.LeastWidth or > PictureFile.MostWidth || !picture.Fits(width))
                {
                    return Bad("width", $"{width}", $"{PictureFile.LeastWidth}–{PictureFile.MostWidth}");
                }

                var png = new MemoryStream();
                picture.WritePng(width, png);
                png.Position = 0;
                return Results.File(png, "image/png");
            default:
                return Bad("as", query.As, "svg, png");
        }
    }

    /// <summary>Templates at their true size, and foundations.</summary>
    public static IResult Templates(Checked<Quilt> quilt, PaperQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        if (quilt.Value is not { } found)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        if ((query.Paper is null ? Papers.UsualFor(found) : Papers.Named(query.Paper)) is not { } paper)
        {
            return Bad("paper", query.Paper!, "letter, a4");
        }

        var pdf = new MemoryStream();
        TemplateBook.Write(found, paper, pdf, Languages.Of(found, workbench.Terms));
        pdf.Position = 0;
        return Results.File(pdf, "application/pdf");
    }

    /// <summary>Whether the quilt comes out of cloth that is there.</summary>
    public static IResult Stash(Checked<Quilt> quilt, StashQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var trim = Length.Zero;
        if (query.Trim is not null && !(LengthText.TryParse(query.Trim, out trim) && trim.Sign >= 0))
        {
            return Bad("trim", query.Trim, "0, 1/4, …");
        }

        var planned = QuiltVerbs.Planned(quilt, query.Plan, workbench, cancel);
        if (planned.Plan is not { } plan)
        {
            return ApiAnswer.Refused(planned.Findings);
        }

        var shelf = query.Shelf == true;
        var cloths = shelf && query.Have is null or []
            ? Checked<ClothList>.Of(new([]))
            : StashText.Read(string.Join('\n', query.Have ?? []), plan.Cloths.FirstOrDefault()?.Terms.UsableWidth ?? workbench.Terms.Cloth.UsableWidth, quilt.Value!.Units);
        if (cloths.Value is not { } list)
        {
            return cloths.Findings.IsEmpty ? Bad("have", "", "3 fat quarters, 1 1/2 yd, …") : ApiAnswer.Refused(cloths.Findings);
        }

        if (shelf)
        {
            ShelfAnswer? answer = null;
            var (fromShelf, found) = SheetCutting.Timed(
                () => answer = ShelfRoom.Plan(plan, workbench.Shelf, list.Sheets, trim, query.OneClothEach ?? false, workbench.Options, StashRoom.Looking, cancel),
                given => (given.Stash.Plan, given.Stash.Findings)
            );
            return ApiAnswer.Json(CutAnswer.Of(fromShelf, Report.Json([.. planned.Findings, .. cloths.Findings, .. found])) with { Shelf = ShelfOutcome.Of(answer!, workbench.Terms.LeastLeftover) });
        }

        var (cut, findings) = SheetCutting.Timed(
            () => StashRoom.Plan(plan, list.Sheets, trim, query.OneClothEach ?? false, StashRoom.Looking, cancel),
            answer => (answer.Plan, answer.Findings)
        );
        return ApiAnswer.Json(CutAnswer.Of(cut, Report.Json([.. planned.Findings, .. cloths.Findings, .. findings])));
    }

    internal static IResult Bad(string name, string text, string wanted) =>
        ApiAnswer.Refused(Finding.Of("api.query", $"query/{name}", ("name", name), ("text", text), ("wanted", wanted)));
}

/// <param name="Across">What the three strips of a seam test measure together.</param>
/// <param name="Middle">What the middle one of them measures.</param>
/// <param name="Tolerance">By how much a block may be off.</param>
/// <param name="Quilts">How many are simulated.</param>
internal sealed record AccuracyQuery(
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "across")] string? Across,
    [property: FromQuery(Name = "middle")] string? Middle,
    [property: FromQuery(Name = "tolerance")] string? Tolerance,
    [property: FromQuery(Name = "quilts")] int? Quilts
)
{
    public PlanQuery Plan => new(Colorway, null, null, null, null, null);
}

/// <param name="As">svg or png.</param>
/// <param name="Width">Pixels of a PNG.</param>
internal sealed record DrawQuery(
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "as")] string? As,
    [property: FromQuery(Name = "width")] int? Width
);

/// <param name="Paper">letter or a4.</param>
internal sealed record PaperQuery([property: FromQuery(Name = "paper")] string? Paper);

/// <param name="Have">Cloth as a quilter writes it down, one kind each: "3 fat quarters".</param>
/// <param name="OneClothEach">Whether each fabric comes from cloths of one name.</param>
internal sealed record StashQuery(
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "have")] string[]? Have,
    [property: FromQuery(Name = "trim")] string? Trim,
    [property: FromQuery(Name = "one-cloth-each")] bool? OneClothEach,
    [property: FromQuery(Name = "shelf")] bool? Shelf
)
{
    public PlanQuery Plan => new(Colorway, null, null, null, null, null);
}
