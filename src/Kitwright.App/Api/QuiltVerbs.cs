using System.Collections.Immutable;
using Kitwright.App.Commands;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Optimise.Allocation;
using Kitwright.Plans;
using Kitwright.Print.Pages;
using Kitwright.Publishing;
using Kitwright.Quilts;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>
/// The verbs that start from a quilt: each is posted a quilt file, or asked of a quilt of the shop. Fabrics are those
/// of the shop's shelf, and so are the terms.
/// </summary>
internal static class QuiltVerbs
{
    public static void MapQuiltVerbs(this RouteGroupBuilder api)
    {
        MapVerb<PlanQuery>(api, "plan", "plan", Plan);
        MapVerb<PlanQuery>(api, "sew", "sew", Sew);
        MapVerb<KitsQuery>(api, "kits", "kits", Kits, tellsSizes: false);
        MapVerb<SizesQuery>(api, "sizes", "", SizesVerb.Answer);
        MapVerb<AccuracyQuery>(api, "accuracy", "", MadeVerbs.Accuracy);
        MapVerb<StashQuery>(api, "stash", "cut", MadeVerbs.Stash);
        MapVerb<PaperQuery>(api, "templates", null, MadeVerbs.Templates);
        MapVerb<DrawQuery>(api, "draw", "", MadeVerbs.Draw, tellsSizes: false, "image/svg+xml", "image/png");
        MapVerb<BookletQuery>(api, "booklet", null, Booklet, tellsSizes: false);
        MapVerb<BagQuery>(api, "bag", null, Bag);
    }

    /// <param name="schema">Name of the answer's schema, empty where none is published; null for a PDF.</param>
    private static void MapVerb<TQuery>(
        RouteGroupBuilder api,
        string verb,
        string? schema,
        Func<Checked<Quilt>, TQuery, IWorkbench, CancellationToken, IResult> answer,
        bool tellsSizes = true,
        params string[] types
    )
        where TQuery : class
    {
        api.MapPost(
                $"/{verb}",
                async (HttpRequest request, [AsParameters] TQuery query, IWorkbench workbench, CancellationToken cancel) =>
                    answer(Allowed(await ApiBody.Quilt(request, cancel)), query, workbench, cancel)
            )
            .Takes("quilt")
            .Gives(schema, types)
            .Described($"api.{verb}.posted");
        api.MapGet(
                $"/quilts/{{slug}}/{verb}",
                (string slug, [AsParameters] TQuery query, IWorkbench workbench, CancellationToken cancel) =>
                    answer(Allowed(ApiBody.Quilt(slug, workbench)), query, workbench, cancel)
            )
            .Gives(schema, types)
            .Described($"api.{verb}");

        // Somebody else's pattern is answered only where no size is told.
        Checked<Quilt> Allowed(Checked<Quilt> quilt) =>
            tellsSizes && quilt.Value is { } found && PublicQuilt.NoSizes(found) is { } refused ? Checked<Quilt>.Failed(refused) : quilt;
    }

    private static IResult Plan(Checked<Quilt> quilt, PlanQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var planned = Planned(quilt, query, workbench, cancel);
        return planned.Plan is null
            ? ApiAnswer.Refused(planned.Findings)
            : ApiAnswer.Json(
                new
                {
                    format = QuiltPlan.Format,
                    version = QuiltPlan.Version,
                    plan = planned.Plan,
                    trace = planned.Trace,
                    leftovers = Leftovers.Of(planned.Plan),
                    findings = Report.Json(planned.Findings),
                }
            );
    }

    private static IResult Sew(Checked<Quilt> quilt, PlanQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var planned = Planned(quilt, query, workbench, cancel);
        return planned.Plan is not { } plan
            ? ApiAnswer.Refused(planned.Findings)
            : ApiAnswer.Json(
                new
                {
                    format = SewCommand.Format,
                    version = SewCommand.Version,
                    sewing = SewJson.Of(plan, Languages.Of(quilt.Value!, workbench.Terms), WorkTimes.Sewist.Usual),
                    findings = Report.Json(planned.Findings),
                }
            );
    }

    private static IResult Booklet(Checked<Quilt> quilt, BookletQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        if (quilt.Value is not { } asked)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        if ((query.Paper is null ? Papers.UsualFor(asked) : Papers.Named(query.Paper)) is not { } paper)
        {
            return MadeVerbs.Bad("paper", query.Paper!, "letter, a4");
        }

        if (PublicQuilt.NoBooklet(asked) is { } refused)
        {
            return ApiAnswer.Refused(refused);
        }

        var planned = Planned(quilt, query.Plan, workbench, cancel);
        if (planned.Plan is not { } plan)
        {
            return ApiAnswer.Refused(planned.Findings);
        }

        var pdf = new MemoryStream();
        Print.Pages.Booklet.Write(asked, plan, workbench.Shelf, paper, Languages.Of(asked, workbench.Terms), pdf);
        pdf.Position = 0;
        return Results.File(pdf, "application/pdf");
    }

    private static IResult Bag(Checked<Quilt> quilt, BagQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        if (quilt.Value is not { } asked)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        if ((query.Paper is null ? Papers.UsualFor(asked) : Papers.Named(query.Paper)) is not { } paper)
        {
            return MadeVerbs.Bad("paper", query.Paper!, "letter, a4");
        }

        if (BagPrint.FormOf(query.Form) is not { } form)
        {
            return MadeVerbs.Bad("form", query.Form ?? "", "yardage, strip-cut, fully-cut");
        }

        var planned = Planned(quilt, new(query.Colorway, null, null, null, null, null), workbench, cancel);
        var printed = BagPrint.Of(asked, planned.Plan, form, workbench.Shelf, paper, Languages.Of(asked, workbench.Terms));
        return printed.Value is { } pdf ? Results.File(pdf, "application/pdf") : ApiAnswer.Refused([.. planned.Findings, .. printed.Findings]);
    }

    private static IResult Kits(Checked<Quilt> quilt, KitsQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var kits = Kitted(quilt, query, workbench, cancel);
        return kits.Value is null
            ? ApiAnswer.Refused(kits.Findings)
            : ApiAnswer.Json(
                new
                {
                    format = KitPlan.Format,
                    version = KitPlan.Version,
                    kits = kits.Value,
                    findings = Report.Json(kits.Findings),
                }
            );
    }

    private static Checked<KitPlan> Kitted(Checked<Quilt> quilt, KitsQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        if (quilt.Value is not { } found)
        {
            return Checked<KitPlan>.Failed(quilt.Findings);
        }

        var wanted = KitsCommand.Wanted(found, query.Each ?? KitsCommand.UsualCount, query.Want ?? []);
        if (wanted.Value is null)
        {
            return Checked<KitPlan>.Failed(wanted.Findings);
        }

        var shelf = workbench.Shelf;
        var options = Standing.OptionsUnder(workbench.Terms);
        var cut = Cutters.Named(options.Budget, cancel);
        return KitRoom.Plan(
            found,
            shelf,
            wanted.Value,
            query.Backing ?? false,
            colorway => PlanningLine.Plan(found, colorway, shelf.Fabrics, options, cut),
            workbench.Terms.Kits,
            BoltBudget.Planning,
            cancel
        );
    }

    internal static PlannedQuilt Planned(Checked<Quilt> quilt, PlanQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var options = query.Options(Standing.OptionsUnder(workbench.Terms));
        if (quilt.Value is not { } found || options.Value is null)
        {
            return new(null, Trace.None, [.. quilt.Findings, .. options.Findings]);
        }

        var (colorway, unknown) = Inputs.Find(found, query.Colorway);
        if (unknown.Length > 0)
        {
            return new(null, Trace.None, unknown);
        }

        var planned = PlanningLine.Plan(found, colorway, workbench.Shelf.Fabrics, options.Value, Cutters.Named(options.Value.Budget, cancel));
        return planned with { Findings = [.. quilt.Findings, .. planned.Findings] };
    }
}

/// <param name="Each">Kits of each colorway.</param>
/// <param name="Want">NAME=COUNT, once for each colorway that wants another number.</param>
internal sealed record KitsQuery(
    [property: FromQuery(Name = "each")] int? Each,
    [property: FromQuery(Name = "want")] string[]? Want,
    [property: FromQuery(Name = "backing")] bool? Backing
);

/// <param name="Form">yardage, strip-cut or fully-cut.</param>
/// <param name="Paper">letter or a4.</param>
internal sealed record BagQuery(
    [property: FromQuery(Name = "form")] string? Form,
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "paper")] string? Paper
);

/// <param name="Paper">letter or a4.</param>
internal sealed record BookletQuery(
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "paper")] string? Paper
)
{
    public PlanQuery Plan => new(Colorway, null, null, null, null, null);
}
