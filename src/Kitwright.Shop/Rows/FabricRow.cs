using Kitwright.Fabrics;
using Kitwright.Plans;

namespace Kitwright.Shop.Rows;

/// <summary>A fabric; lengths in ticks, price in minor units of the shop's currency.</summary>
public sealed class FabricRow
{
    public required string Number { get; init; }
    public required string Name { get; set; }
    public required long WidthTicks { get; set; }
    public required long PricePerYard { get; set; }
    public required string Color { get; set; }
    public required PrintKind Print { get; set; }
    public required string Second { get; set; }
    public required int Seed { get; set; }
    public required long? PutUpTicks { get; set; }
    public PrintDirection Direction { get; set; }
    public long? RepeatAlongTicks { get; set; }
    public long? RepeatAcrossTicks { get; set; }
    public long? PanelTicks { get; set; }
    public bool TwoSided { get; set; }
    public required bool Demo { get; init; }
}
