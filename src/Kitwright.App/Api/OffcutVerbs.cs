using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Shop;
using Kitwright.Shop.Ledger;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>Leftovers as stock: listed, booked under the client's id, and taken back.</summary>
internal static class OffcutVerbs
{
    private const int MostList = 4 * 1024 * 1024;

    /// <summary>What a list can say of its pieces; the rest follows from these.</summary>
    public static readonly ImmutableSortedDictionary<string, OffcutKind> Kinds = new Dictionary<string, OffcutKind>
    {
        ["shelved"] = OffcutKind.Shelved,
        ["used"] = OffcutKind.Used,
        ["thrown-away"] = OffcutKind.ThrownAway,
        ["counted"] = OffcutKind.Counted,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    public static void MapOffcutVerbs(this RouteGroupBuilder api)
    {
        api.MapGet("/stock/leftovers.csv", List).Produces<string>(StatusCodes.Status200OK, "text/csv").Described("api.leftovers");
        api.MapPut("/stock/leftovers/{id:guid}", Book).Accepts<Stream>("text/csv").Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.leftovers.book");
        api.MapGet("/stock/leftovers/{id:guid}", Booked).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.leftovers.booked");
        api.MapPut("/stock/leftovers/{id:guid}/back", TakeBack).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.leftovers.back");
    }

    private static async Task<IResult> List(ShopStore store, CancellationToken cancel) =>
        Results.Text(OffcutFile.Write(await store.Offcuts.All(cancel)), "text/csv");

    private static async Task<IResult> Book(
        Guid id,
        HttpRequest request,
        ShopStore store,
        IWorkbench workbench,
        CancellationToken cancel,
        [FromQuery(Name = "as")] string? kind = null,
        [FromQuery(Name = "for")] string? purpose = null
    )
    {
        if (!Kinds.TryGetValue(kind ?? "shelved", out var what))
        {
            return MadeVerbs.Bad("as", kind!, string.Join(", ", Kinds.Keys));
        }

        var bytes = await ApiBody.Read(request, MostList, cancel);
        var list = bytes.Value is null ? Checked<OffcutList>.Failed(bytes.Findings) : OffcutFile.Read(bytes.Value);
        if (list.Value is null)
        {
            return ApiAnswer.Refused(list.Findings);
        }

        var lines = list.Value.Pieces.Select(p => new OffcutLine(p.Fabric, p.Width, p.Height, what, p.Count, purpose ?? p.From));
        return await Answer(await store.Offcuts.Book(new(id, Environment.UserName, [.. lines]), cancel), workbench);
    }

    private static async Task<IResult> TakeBack(Guid id, ShopStore store, IWorkbench workbench, CancellationToken cancel) =>
        await Answer(await store.Offcuts.TakeBack(id, Environment.UserName, cancel), workbench);

    private static async Task<IResult> Booked(Guid id, ShopStore store, CancellationToken cancel) =>
        await store.Offcuts.Find(id, cancel) is { } booked
            ? ApiAnswer.Json(booked)
            : ApiAnswer.Refused(Finding.Of("leftovers.no-booking", $"stock/leftovers/{id}"));

    private static async Task<IResult> Answer(Checked<OffcutsBooked> booked, IWorkbench workbench)
    {
        if (booked.Value is not { } done)
        {
            return ApiAnswer.Refused(booked.Findings);
        }

        await workbench.Refresh();
        return ApiAnswer.Json(done);
    }
}
