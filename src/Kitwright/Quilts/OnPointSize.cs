using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>How large a center of blocks on point is.</summary>
public static class OnPointSize
{
    /// <summary>
    /// Of so many blocks one way: their diagonals with the sashing between, up to the ruler step, as no ruler has a
    /// multiple of √2.
    /// </summary>
    public static Length Of(Length block, Sashing? sashing, int count, Length step)
    {
        var pitch = block + (sashing?.Width ?? Length.Zero);
        var beyond = sashing is null ? Length.Zero : SashedOnPointSetting.Beyond(sashing);
        return Surd.OfRoot2(((pitch * count) + beyond).InInches).RoundUpTo(step);
    }
}
