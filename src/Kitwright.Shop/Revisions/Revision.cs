using Kitwright.Words;

namespace Kitwright.Shop.Revisions;

/// <summary>A project in a list.</summary>
/// <param name="Slug">Its name in addresses.</param>
/// <param name="Revision">Number of the current revision.</param>
/// <param name="At">When that was made.</param>
public sealed record ProjectLine(Guid Id, string Slug, string Name, bool Demo, int Revision, DateTimeOffset At);

/// <summary>One state of a project.</summary>
/// <param name="Number">Place in the order of arrival, from 1.</param>
/// <param name="Base">The revision that was edited; null for the first.</param>
/// <param name="Shows">The revision whose document it shows again; itself unless it undoes or restores.</param>
/// <param name="Change">What was changed, in words.</param>
/// <param name="Json">The whole document.</param>
public sealed record Revision(
    Guid Id,
    Guid Project,
    int Number,
    Guid? Base,
    Guid Shows,
    Message Change,
    string Json,
    string By,
    DateTimeOffset At
);

/// <summary>A project with its current revision.</summary>
public sealed record ProjectState(ProjectLine Project, Revision Current);

/// <summary>An edit to be kept.</summary>
/// <param name="Id">Made by the client; sent twice, it is kept once.</param>
/// <param name="Base">The revision that was on the screen.</param>
/// <param name="Name">The project's new name; null leaves it.</param>
public sealed record Edit(Guid Id, Guid Base, Message Change, string Json, string By, string? Name = null);

/// <summary>An edit as it was kept.</summary>
/// <param name="Beside">
/// True where somebody else had moved the project on: the edit is kept as a revision beside the current one, which
/// stays; <see cref="ProjectChains.Restore"/> makes it current.
/// </param>
/// <param name="Current">The project's current revision now.</param>
public sealed record Kept(Revision Revision, bool Beside, Revision Current);
