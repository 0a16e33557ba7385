namespace Kitwright.Shop.Rows;

/// <summary>One state of a project; never changed and never removed.</summary>
public sealed class RevisionRow
{
    /// <summary>Made by the client, so that a revision can be sent twice.</summary>
    public required Guid Id { get; init; }

    public required Guid Project { get; init; }

    /// <summary>Place in the order of arrival, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The revision that was edited; null for the first.</summary>
    public required Guid? Base { get; init; }

    /// <summary>The revision whose document this one shows again; itself unless it undoes or restores.</summary>
    public required Guid Shows { get; init; }

    /// <summary>What was changed, as a message in JSON.</summary>
    public required string Change { get; init; }

    /// <summary>The whole document.</summary>
    public required string Json { get; init; }

    public required string By { get; init; }
    public required DateTimeOffset At { get; init; }
}
