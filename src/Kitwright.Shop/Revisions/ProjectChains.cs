using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Shop.Rows;
using Kitwright.Words;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Revisions;

/// <summary>
/// The shop's projects, each a chain of revisions that never change. An edit is a named change on a base revision; of
/// two edits on one base, the second is kept beside the first; undo is a new revision.
/// </summary>
public sealed class ProjectChains
{
    private readonly ShopStore store;

    internal ProjectChains(ShopStore store) => this.store = store;

    /// <summary>All projects by name.</summary>
    public async Task<ImmutableArray<ProjectLine>> All(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var rows = await (
            from project in context.Projects.AsNoTracking()
            join head in context.Revisions on project.Head equals head.Id
            orderby project.Name, project.Slug
            select new { project, head.Number, head.At }
        ).ToListAsync(cancel);
        return [.. rows.Select(r => RevisionRows.Read(r.project, r.Number, r.At))];
    }

    /// <summary>The project of that address; null where there is none.</summary>
    public async Task<ProjectState?> Find(string slug, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var found = await (
            from project in context.Projects.AsNoTracking()
            join head in context.Revisions on project.Head equals head.Id
            where project.Slug == slug
            select new { project, head }
        ).SingleOrDefaultAsync(cancel);
        return found is null ? null : new(RevisionRows.Read(found.project, found.head.Number, found.head.At), RevisionRows.Read(found.head));
    }

    /// <summary>One revision of any project; null where there is none.</summary>
    public async Task<Revision?> Revision(Guid id, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await context.Revisions.AsNoTracking().SingleOrDefaultAsync(r => r.Id == id, cancel) is { } row ? RevisionRows.Read(row) : null;
    }

    /// <summary>All revisions of a project in the order of their numbers, the ones beside the chain included.</summary>
    public async Task<ImmutableArray<Revision>> Chain(Guid project, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var rows = await context.Revisions.AsNoTracking().Where(r => r.Project == project).OrderBy(r => r.Number).ToListAsync(cancel);
        return [.. rows.Select(RevisionRows.Read)];
    }

    /// <summary>Begins a project; the same first revision again gives the project that it began.</summary>
    /// <param name="revision">Id of the first revision, made by the client.</param>
    public Task<Checked<ProjectState>> Begin(Guid revision, string name, string json, Message change, string by, CancellationToken cancel = default) =>
        store.TryWrite(
            async context => Checked<ProjectState>.Of(
                await Beginning.Run(context, new(revision, Slug.Of(name), name, json, change, by, Demo: false), store.Now(), cancel)
            ),
            cancel
        );

    /// <summary>Keeps an edit: as the current revision where its base is current, else beside it.</summary>
    public Task<Checked<Kept>> Keep(Guid project, Edit edit, CancellationToken cancel = default) =>
        store.TryWrite(context => Keeping.Run(context, project, edit, edit.Id, store.Now(), cancel), cancel);

    /// <summary>
    /// Shows the document before the last change again, as a new revision; undone once more, the one before that.
    /// </summary>
    /// <param name="id">Id of the new revision, made by the client.</param>
    /// <param name="seen">The revision that was on the screen; where it is no longer current nothing is undone.</param>
    public Task<Checked<Kept>> Undo(Guid project, Guid id, Guid seen, string by, CancellationToken cancel = default) =>
        store.TryWrite(context => Undoing.Run(context, project, new(id, seen, by), store.Now(), cancel), cancel);

    /// <summary>Shows the document of any earlier revision again, as a new revision.</summary>
    /// <param name="revision">What to show: a revision of this project.</param>
    public Task<Checked<Kept>> Restore(Guid project, Guid id, Guid revision, string by, CancellationToken cancel = default) =>
        store.TryWrite(context => Undoing.Restore(context, project, revision, new(id, default, by), store.Now(), cancel), cancel);
}
