using System.Numerics;

namespace Kitwright.Checking.Cloths;

/// <summary>The pieces' area over the strip's length, rounded up to a unit.</summary>
internal static class AreaBound
{
    public static BigInteger Of(Grid grid) =>
        grid.Width == 0 ? 0 : new Measure.Rational(grid.Area, grid.Width).Ceiling();
}
