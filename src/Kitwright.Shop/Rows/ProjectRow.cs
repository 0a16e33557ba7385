namespace Kitwright.Shop.Rows;

/// <summary>A quilt that the shop works on; what it is stands in its revisions.</summary>
public sealed class ProjectRow
{
    public required Guid Id { get; init; }

    /// <summary>Its name in addresses; unique.</summary>
    public required string Slug { get; init; }

    public required string Name { get; set; }
    public required DateTimeOffset At { get; init; }

    /// <summary>Whether it came with the demo shop.</summary>
    public required bool Demo { get; init; }

    /// <summary>The revision that is current.</summary>
    public required Guid Head { get; set; }

    /// <summary>Counts the moves of the head; guards it against two writers.</summary>
    public required int Version { get; set; }
}
