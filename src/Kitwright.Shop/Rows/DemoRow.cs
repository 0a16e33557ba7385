using Kitwright.Shop.Demo;

namespace Kitwright.Shop.Rows;

/// <summary>Whether the demo shop is here; one row, there from the first migration on.</summary>
public sealed class DemoRow
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;
    public required DemoState State { get; set; }
}
