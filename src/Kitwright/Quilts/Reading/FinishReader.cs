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
        );
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
