using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>Paper grays for a quilt without a colorway, by the value that the designer wants.</summary>
public static class PlainColors
{
    public static string Of(Role role) =>
        role.Value switch
        {
            Value.Light => "#efeae1",
            Value.Dark => "#5b5750",
            Value.Medium => "#a8a196",
            _ => "#cfc8bc",
        };
}
