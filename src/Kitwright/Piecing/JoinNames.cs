using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>What a unit is that is joined by straight seams, and what a person calls it.</summary>
internal static class JoinNames
{
    /// <summary>The sides of a border go on before its top and bottom.</summary>
    private static Message Bordered(Region region, StraightCuts cuts) =>
        region.Items.All(item => item.InBorder)
            ? Message.Of("unit.border-strip", ("border", region.Items.Max(item => item.Border)))
            : Message.Of(
                int.IsOddInteger(region.Items.Max(item => item.Ring)) ? "unit.coped" : "unit.bordered",
                ("border", region.Items.Max(item => item.Border)),
                ("sides", cuts.Lines[0].Step.X.IsZero ? "sides" : "all")
            );

    public static Message Of(string kind, Region region, StraightCuts cuts) =>
        kind switch
        {
            "bordered" => Bordered(region, cuts),
            "border-run" => Message.Of("unit.border-run", ("units", cuts.Parts.Length), ("border", region.Items[0].Border)),
            _ => Message.Of("unit." + kind, ("parts", cuts.Parts.Length)),
        };

    public static string KindOf(Region region, StraightCuts cuts) =>
        region.Items.All(i => i.InBorder && i.Ring == region.Items[0].Ring) && region.Items.Any(i => i.Block is not null) ? "border-run"
        : region.Items.Any(i => i.InBorder) ? "bordered"
        : region.Items.All(i => i.Role is not null) ? "joined"
        : cuts.Parts.All(p => p.Items.Length == 1) ? "block-row"
        : "center";
}
