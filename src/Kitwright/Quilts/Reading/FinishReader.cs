namespace Kitwright.Quilts.Reading;

/// <summary>What finishes a quilt: borders, binding, backing.</summary>
internal static class FinishReader
{
    public static Border ReadBorder(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("width").Size(),
            fields.Required("role").Id(),
            fields.Optional("style")?.OneOf<BorderStyle>() ?? BorderStyle.Butted,
            fields.Optional("corner")?.Id(),
            fields.Optional("grain")?.OneOf<StripGrain>() ?? StripGrain.Crosswise
        )
        {
            Units = fields.Optional("units") is { } units ? ReadUnits(units) : null,
        };
    }

    private static BorderUnits ReadUnits(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("block").Id(),
            fields.Optional("turns")?.Whole(0, 3) ?? 0,
            fields.Optional("corner")?.Id(),
            fields.Optional("coping")?.Flag() ?? true,
            fields.Optional("across")?.Whole(1, QuiltLimits.BorderUnits),
            fields.Optional("down")?.Whole(1, QuiltLimits.BorderUnits),
            fields.Optional("fromMiddle")?.Flag() ?? false
        )
        {
            Alternate = fields.Optional("alternate")?.Id(),
        };
    }

    public static Binding ReadBinding(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("role").Id(),
            fields.Required("stripWidth").Size(),
            fields.Required("allowance").SizeOrZero(),
            fields.Optional("grain")?.OneOf<StripGrain>() ?? StripGrain.Crosswise
        );
    }

    public static Backing ReadBacking(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("role").Id(),
            fields.Required("overhang").SizeOrZero(),
            fields.Required("seam").Size(),
            fields.Optional("seams")?.OneOf<PanelSeams>()
        );
    }
}
