using System.Text.Json;
using Kitwright.Plans;
using Kitwright.Shop.Rows;
using Kitwright.Words;

namespace Kitwright.Shop.Revisions;

/// <summary>Revisions between records and rows.</summary>
internal static class RevisionRows
{
    public static Revision Read(RevisionRow row) =>
        new(
            row.Id,
            row.Project,
            row.Number,
            row.Base,
            row.Shows,
            JsonSerializer.Deserialize<Message>(row.Change, PlanJson.Options)!,
            row.Json,
            row.By,
            row.At
        );

    public static string Write(Message change) => JsonSerializer.Serialize(change, PlanJson.Options);

    public static ProjectLine Read(ProjectRow project, int number, DateTimeOffset at) =>
        new(project.Id, project.Slug, project.Name, project.Demo, number, at);
}
