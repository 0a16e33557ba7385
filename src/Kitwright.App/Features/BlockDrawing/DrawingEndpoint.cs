using Kitwright.App.Web;
using Kitwright.Blocks;

namespace Kitwright.App.Features.BlockDrawing;

/// <summary><c>GET /quilts/{slug}/draw/block.json?block=ID</c>: the drawing as it stands, as a block file.</summary>
public static class DrawingEndpoint
{
    public static void MapDrawing(this WebApplication app) => app.MapGet("/quilts/{slug}/draw/block.json", Write);

    private static IResult Write(string slug, string block, IWorkbench workbench, DraftLog drafts)
    {
        if (workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is not { } quilt || quilt.Blocks.FirstOrDefault(b => b.Id == block) is not { } drawn)
        {
            return Results.NotFound();
        }

        var state = drafts.Open($"{slug}.{block}", () => BlockFile.Write(QuiltBlocks.ToDraw(quilt, drawn)));
        return Results.File(System.Text.Encoding.UTF8.GetBytes(state.Document), "application/json", $"{block}.json");
    }
}
