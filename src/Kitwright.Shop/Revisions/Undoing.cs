using Kitwright.Findings;
using Kitwright.Words;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Revisions;

/// <param name="Seen">The revision that was on the screen.</param>
internal sealed record UndoRequest(Guid Id, Guid Seen, string By);

/// <summary>Shows an earlier document again, as a new revision on the current one.</summary>
internal static class Undoing
{
    public static async Task<Checked<Kept>> Run(ShopContext context, Guid project, UndoRequest request, DateTimeOffset now, CancellationToken cancel)
    {
        var revisions = context.Revisions.AsNoTracking().Where(r => r.Project == project);
        if (await revisions.SingleOrDefaultAsync(r => r.Id == request.Seen, cancel) is not { } seen)
        {
            return Keeping.Failed("revision.no-base", request.Seen);
        }

        var head = await context.Projects.Where(p => p.Id == project).Select(p => p.Head).SingleAsync(cancel);
        if (head != seen.Id && head != request.Id)
        {
            return Keeping.Failed("revision.moved-on", request.Seen);
        }

        // The change to be undone is the one that made the document on the screen, not the undo that showed it again.
        var undone = await revisions.SingleAsync(r => r.Id == seen.Shows, cancel);
        if (undone.Base is not { } before)
        {
            return Keeping.Failed("revision.nothing-before", request.Seen);
        }

        var shown = await revisions.SingleAsync(r => r.Id == before, cancel);
        var change = Message.Of("revision.undo", ("change", RevisionRows.Read(undone).Change));
        return await Keeping.Run(context, project, new(request.Id, seen.Id, change, shown.Json, request.By), shown.Shows, now, cancel);
    }

    public static async Task<Checked<Kept>> Restore(
        ShopContext context,
        Guid project,
        Guid revision,
        UndoRequest request,
        DateTimeOffset now,
        CancellationToken cancel
    )
    {
        var revisions = context.Revisions.AsNoTracking().Where(r => r.Project == project);
        if (await revisions.SingleOrDefaultAsync(r => r.Id == revision, cancel) is not { } shown)
        {
            return Keeping.Failed("revision.no-base", revision);
        }

        var earlier = await revisions.SingleOrDefaultAsync(r => r.Id == request.Id, cancel);
        var on = earlier?.Base ?? await context.Projects.Where(p => p.Id == project).Select(p => p.Head).SingleAsync(cancel);
        var change = Message.Of("revision.restore", ("number", shown.Number));
        return await Keeping.Run(context, project, new(request.Id, on, change, shown.Json, request.By), shown.Shows, now, cancel);
    }
}
