using Kitwright.Shop.Rows;
using Kitwright.Words;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Revisions;

/// <summary>A project to be begun.</summary>
internal sealed record BeginRequest(Guid Revision, string Slug, string Name, string Json, Message Change, string By, bool Demo);

/// <summary>Begins a project with its first revision.</summary>
internal static class Beginning
{
    public static async Task<ProjectState> Run(ShopContext context, BeginRequest request, DateTimeOffset now, CancellationToken cancel)
    {
        if (await context.Revisions.AsNoTracking().SingleOrDefaultAsync(r => r.Id == request.Revision, cancel) is { } earlier)
        {
            var begun = await context.Projects.AsNoTracking().SingleAsync(p => p.Id == earlier.Project, cancel);
            return new(RevisionRows.Read(begun, earlier.Number, earlier.At), RevisionRows.Read(earlier));
        }

        var taken = await context.Projects.Select(p => p.Slug).ToListAsync(cancel);
        var project = new ProjectRow
        {
            Id = Guid.CreateVersion7(now),
            Slug = Slug.Free(request.Slug, taken.ToHashSet(StringComparer.Ordinal)),
            Name = request.Name,
            At = now,
            Demo = request.Demo,
            Head = request.Revision,
            Version = 1,
        };
        var revision = new RevisionRow
        {
            Id = request.Revision,
            Project = project.Id,
            Number = 1,
            Base = null,
            Shows = request.Revision,
            Change = RevisionRows.Write(request.Change),
            Json = request.Json,
            By = request.By,
            At = now,
        };
        context.Projects.Add(project);
        context.Revisions.Add(revision);
        await context.SaveChangesAsync(cancel);
        return new(RevisionRows.Read(project, 1, now), RevisionRows.Read(revision));
    }
}
