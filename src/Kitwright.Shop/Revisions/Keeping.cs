using Kitwright.Findings;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Revisions;

/// <summary>Adds a revision to a project.</summary>
internal static class Keeping
{
    /// <param name="shows">The revision whose document the new one shows; its own id for an edit.</param>
    public static async Task<Checked<Kept>> Run(
        ShopContext context,
        Guid project,
        Edit edit,
        Guid shows,
        DateTimeOffset now,
        CancellationToken cancel
    )
    {
        if (await context.Projects.SingleOrDefaultAsync(p => p.Id == project, cancel) is not { } row)
        {
            return Failed("revision.no-project", project);
        }

        if (await context.Revisions.AsNoTracking().SingleOrDefaultAsync(r => r.Id == edit.Id, cancel) is { } earlier)
        {
            return earlier.Project == project && earlier.Json == edit.Json && earlier.Base == edit.Base
                ? Checked<Kept>.Of(await Answer(context, row, earlier, cancel))
                : Failed("revision.other", edit.Id);
        }

        if (!await context.Revisions.AnyAsync(r => r.Id == edit.Base && r.Project == project, cancel))
        {
            return Failed("revision.no-base", edit.Base);
        }

        var revision = new RevisionRow
        {
            Id = edit.Id,
            Project = project,
            Number = await context.Revisions.Where(r => r.Project == project).MaxAsync(r => r.Number, cancel) + 1,
            Base = edit.Base,
            Shows = shows,
            Change = RevisionRows.Write(edit.Change),
            Json = edit.Json,
            By = edit.By,
            At = now,
        };
        context.Revisions.Add(revision);
        if (row.Head == edit.Base)
        {
            row.Head = revision.Id;
            row.Name = edit.Name ?? row.Name;
            row.Version++;
        }

        await context.SaveChangesAsync(cancel);
        return Checked<Kept>.Of(await Answer(context, row, revision, cancel));
    }

    public static Checked<Kept> Failed(string rule, Guid id) => Checked<Kept>.Failed(Finding.Of(rule, $"revision/{id}"));

    private static async Task<Kept> Answer(ShopContext context, ProjectRow project, RevisionRow revision, CancellationToken cancel)
    {
        var current = await context.Revisions.AsNoTracking().SingleAsync(r => r.Id == project.Head, cancel);
        if (current.Id == revision.Id)
        {
            return new(RevisionRows.Read(revision), false, RevisionRows.Read(current));
        }

        // A revision is in the chain where the current one comes from it.
        var bases = await context.Revisions.Where(r => r.Project == project.Id).ToDictionaryAsync(r => r.Id, r => r.Base, cancel);
        Guid? at = current.Id;
        while (at is { } id && id != revision.Id)
        {
            at = bases[id];
        }

        return new(RevisionRows.Read(revision), at is null, RevisionRows.Read(current));
    }
}
