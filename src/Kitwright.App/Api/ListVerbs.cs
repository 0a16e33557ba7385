using System.Collections.Immutable;
using Kitwright.App.Commands;
using Kitwright.App.Features.Beginning;
using Kitwright.App.Web;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>The verbs that start from no quilt: the block book, the settings of a block, and any list of pieces.</summary>
internal static class ListVerbs
{
    /// <summary>Bytes of a list of pieces or cloths.</summary>
    private const int MostList = 4 * 1024 * 1024;

    public static void MapListVerbs(this RouteGroupBuilder api)
    {
        api.MapGet("/blocks", () => ApiAnswer.Json(new { blocks = BlockBook.All.Select(BlocksCommand.Line) })).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.blocks");
        api.MapGet("/blocks/{id}", Block).Gives("block").Described("api.block");
        api.MapGet("/blocks/{id}/sets", Sets).Produces<Stream>(StatusCodes.Status200OK, "application/json").Described("api.sets");
        api.MapGet("/blocks/{id}/quilt", Quilt).Gives("quilt").Described("api.block-quilt");
        api.MapPost("/cut", Cut).Accepts<Stream>("text/csv", "multipart/form-data").Gives("cut").Described("api.cut");
    }

    private static IResult Block(string id) =>
        BlockBook.Find(id) is { } block ? Results.Text(BlockFile.Write(block), "application/json") : NoBlock(id);

    private static IResult Sets(string id, bool mirrored = false) =>
        BlockBook.Find(id) is not { } block ? NoBlock(id)
        : block.Grid.Columns != block.Grid.Rows ? ApiAnswer.Refused(Finding.Of("sets.oblong", $"blocks/{id}", ("block", block.Name)))
        : ApiAnswer.Json(new { sets = SetsCommand.Counted(block, mirrored) });

    private static IResult Quilt(string id, [AsParameters] BeginQuery query, IWorkbench workbench)
    {
        if (BlockBook.Find(id) is not { } block)
        {
            return NoBlock(id);
        }

        var (asked, findings) = query.Form.Read(block, LengthUnit.Inch);
        var made = findings.IsEmpty ? asked.Make() : Checked<Quilt>.Failed(findings);
        if (made.Value is not { } quilt)
        {
            return ApiAnswer.Refused(made.Findings);
        }

        var colorway = FirstColorway.Of(quilt, workbench.Shelf, Saying.Say("begin.colorway.name"));
        return Results.Text(QuiltFile.Write(colorway is null ? quilt : quilt with { Colorways = [colorway] }), "application/json");
    }

    /// <summary>
    /// The list of pieces is the body, or the part <c>pieces</c> of a form with the list of cloths as its part
    /// <c>cloth</c>. The query has the command's options: <c>?width=40&amp;stages=3</c>.
    /// </summary>
    private static async Task<IResult> Cut(HttpRequest request, CancellationToken cancel)
    {
        Checked<byte[]> pieces,
            cloth = Checked<byte[]>.Of([]);
        if (request.HasFormContentType)
        {
            var form = await ApiBody.Form(request, 2 * MostList, cancel);
            if (form.Value is null)
            {
                return ApiAnswer.Refused(form.Findings);
            }

            pieces = Checked<byte[]>.Of(form.Value.GetValueOrDefault("pieces") ?? []);
            cloth = Checked<byte[]>.Of(form.Value.GetValueOrDefault("cloth") ?? []);
        }
        else
        {
            pieces = await ApiBody.Read(request, MostList, cancel);
        }

        if (pieces.Value is null)
        {
            return ApiAnswer.Refused(pieces.Findings);
        }

        var terms = CutOptions.FromPairs([.. request.Query.SelectMany(pair => pair.Value.Select(value => (pair.Key, value ?? "")))], cloth.Value!.Length > 0);
        if (terms.Value is null)
        {
            return ApiAnswer.Refused(terms.Findings);
        }

        var (cut, findings) = CutCommand.Cut(pieces.Value, cloth.Value, terms.Value, cancel);
        return cut is null ? ApiAnswer.Refused(findings) : ApiAnswer.Json(CutAnswer.Of(cut, Report.Json(findings)));
    }

    private static IResult NoBlock(string id) => ApiAnswer.Refused(Finding.Of("blocks.unknown", $"blocks/{id}", ("id", id)));
}

/// <summary>What a quilt is begun with, as the command <c>begin</c> takes it.</summary>
internal sealed record BeginQuery(
    [property: FromQuery(Name = "name")] string? Name,
    [property: FromQuery(Name = "units")] string? Units,
    [property: FromQuery(Name = "size")] string? Size,
    [property: FromQuery(Name = "columns")] string? Columns,
    [property: FromQuery(Name = "rows")] string? Rows,
    [property: FromQuery(Name = "sashing")] string? Sashing,
    [property: FromQuery(Name = "border")] string? Border
)
{
    public BeginForm Form => new(Name, Units, Size, Columns, Rows, Sashing, Border);
}
