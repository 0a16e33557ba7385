using System.Collections.Immutable;
using Kitwright.App.Commands;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Checking;
using Kitwright.Exchange;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Publishing;
using Kitwright.Quilts;
using Kitwright.Shop;
using Kitwright.Shop.Revisions;
using Kitwright.Words;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>
/// What reads and changes the shop itself. Every write carries an id that the client makes: sent twice it is done
/// once, and after a lost answer it is simply sent again.
/// </summary>
internal static class ShopVerbs
{
    private static readonly string[] StockTypes =
    [
        "text/csv",
        "text/tab-separated-values",
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        "application/octet-stream",
    ];

    public static void MapShopVerbs(this RouteGroupBuilder api)
    {
        api.MapPost("/check", Check).Takes("plan").Gives("check").Described("api.check");
        api.MapGet("/quilts", Quilts).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.quilts");
        api.MapGet("/quilts/{slug}", Quilt).Gives("quilt").Described("api.quilt");
        api.MapPut("/quilts/{slug}/revisions/{id:guid}", Keep).Takes("quilt").Produces<KeptJson>().Described("api.keep");
        api.MapPut("/quilts/new/{id:guid}", Begin).Takes("quilt").Produces<KeptJson>().Described("api.begin");
        api.MapGet("/stock", Shelf).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.stock");
        api.MapPut("/stock/{id:guid}", TakeStock).Accepts<Stream>(StockTypes[0], StockTypes[1..]).Gives("stock").Described("api.stock.take");
        api.MapGet("/stock/{id:guid}", Booked).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.stock.booked");
        api.MapOffcutVerbs();
    }

    private static async Task<IResult> Check(HttpRequest request, CancellationToken cancel)
    {
        var bytes = await ApiBody.Read(request, ApiBody.MostBytes, cancel);
        var plan = bytes.Value is null ? Checked<QuiltPlan>.Failed(bytes.Findings) : PlanFile.Read(Inputs.Text(bytes.Value));
        if (plan.Value is null)
        {
            return ApiAnswer.Refused(plan.Findings);
        }

        var findings = plan.Findings.AddRange(PlanChecker.Check(plan.Value).Findings);
        return ApiAnswer.Json(new { good = Report.ExitFor(findings) == ExitCode.Good, findings = Report.Json(findings) });
    }

    private static async Task<IResult> Quilts(ShopStore store, CancellationToken cancel) =>
        ApiAnswer.Json(
            new
            {
                quilts = (await store.Projects.All(cancel)).Select(line => new { line.Slug, line.Name, line.Revision, line.At }),
            }
        );

    private static async Task<IResult> Quilt(string slug, HttpResponse response, ShopStore store, CancellationToken cancel)
    {
        if (await store.Projects.Find(slug, cancel) is not { } project)
        {
            return NoQuilt(slug);
        }

        if (QuiltFile.Read(project.Current.Json).Value is { } read && PublicQuilt.NoSizes(read) is { } refused)
        {
            return ApiAnswer.Refused(refused);
        }

        // What a client edits from here on has this revision as its base.
        response.Headers.ETag = $"\"{project.Current.Id}\"";
        return Results.Text(project.Current.Json, "application/json");
    }

    private static async Task<IResult> Keep(
        string slug,
        Guid id,
        Guid @base,
        HttpRequest request,
        ShopStore store,
        IWorkbench workbench,
        CancellationToken cancel
    )
    {
        var quilt = await ApiBody.Quilt(request, cancel);
        if (quilt.Value is null)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        if (await store.Projects.Find(slug, cancel) is not { } project)
        {
            return NoQuilt(slug);
        }

        var edit = new Edit(id, @base, Message.Of("revision.api"), QuiltFile.Write(quilt.Value), Environment.UserName);
        var kept = await store.Projects.Keep(project.Project.Id, edit, cancel);
        if (kept.Value is not { } done)
        {
            return ApiAnswer.Refused(kept.Findings);
        }

        await workbench.Refresh();
        return ApiAnswer.Json(new KeptJson(slug, done.Revision.Id, done.Revision.Number, done.Beside, done.Current.Id));
    }

    private static async Task<IResult> Begin(Guid id, HttpRequest request, ShopStore store, IWorkbench workbench, CancellationToken cancel)
    {
        var quilt = await ApiBody.Quilt(request, cancel);
        if (quilt.Value is not { } found)
        {
            return ApiAnswer.Refused(quilt.Findings);
        }

        var done = await store.Projects.Begin(id, found.Name, QuiltFile.Write(found), Message.Of("revision.api"), Environment.UserName, cancel);
        if (done.Value is not { } begun)
        {
            return ApiAnswer.Refused(done.Findings);
        }

        await workbench.Refresh();
        return ApiAnswer.Json(new KeptJson(begun.Project.Slug, id, begun.Project.Revision, false, begun.Current.Id));
    }

    private static IResult Shelf(IWorkbench workbench) => ApiAnswer.Json(workbench.Shelf);

    private static async Task<IResult> TakeStock(
        Guid id,
        HttpRequest request,
        ShopStore store,
        IWorkbench workbench,
        CancellationToken cancel,
        [FromQuery(Name = "dry-run")] bool dryRun = false,
        [FromQuery(Name = "column")] string[]? column = null
    )
    {
        var names = StockCommand.Names(column ?? []);
        var bytes = await ApiBody.Read(request, StockFile.MostBytes, cancel);
        if (names.Value is null || bytes.Value is null)
        {
            return ApiAnswer.Refused([.. names.Findings, .. bytes.Findings]);
        }

        var intake = await StockIntake.Of(store, id, bytes.Value, names.Value, cancel);
        if (intake.Would is null)
        {
            return ApiAnswer.Refused(intake.Findings);
        }

        if (dryRun)
        {
            return ApiAnswer.Json(StockAnswer.Of(new(intake.Would, intake.Findings)));
        }

        var import = await intake.TakeOver(store, cancel);
        if (import.Value is null)
        {
            return ApiAnswer.Refused(import.Findings);
        }

        await workbench.Refresh();
        return ApiAnswer.Json(StockAnswer.Of(new(import.Value, intake.Findings)));
    }

    private static async Task<IResult> Booked(Guid id, ShopStore store, CancellationToken cancel) =>
        await store.Stock.Find(id, cancel) is { } booked
            ? ApiAnswer.Json(booked)
            : ApiAnswer.Refused(Finding.Of("api.no-booking", $"stock/{id}"));

    private static IResult NoQuilt(string slug) =>
        ApiAnswer.Refused(Finding.Of("api.no-quilt", $"quilts/{slug}", ("slug", slug)));
}

/// <summary>A revision as it was kept.</summary>
/// <param name="Slug">The quilt's name in addresses.</param>
/// <param name="Beside">True where somebody else had moved the quilt on: this one stands beside the current revision.</param>
/// <param name="Current">The quilt's current revision.</param>
internal sealed record KeptJson(string Slug, Guid Revision, int Number, bool Beside, Guid Current);
