using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>An arrow that can be seen on any fabric: ink with a rim of paper.</summary>
internal static class Arrow
{
    private const double HalfShaft = 1;
    private const double HalfHead = 3.6;
    private const double Head = 6;

    /// <param name="from">In points.</param>
    /// <param name="to">The tip, in points.</param>
    /// <param name="both">A head at either end: the allowances lie open.</param>
    public static Shape Of(Place from, Place to, bool both)
    {
        var step = to - from;
        var length = Math.Sqrt((step.X * step.X) + (step.Y * step.Y));
        Place along = step * (1 / length),
            aside = new(-along.Y, along.X);
        Place At(double forward, double sideways) => from + (along * forward) + (aside * sideways);
        Place[] tip = [At(length - Head, HalfShaft), At(length - Head, HalfHead), to, At(length - Head, -HalfHead), At(length - Head, -HalfShaft)];
        Place[] tail = both
            ? [At(Head, -HalfShaft), At(Head, -HalfHead), from, At(Head, HalfHead), At(Head, HalfShaft)]
            : [At(0, -HalfShaft), At(0, HalfShaft)];
        return new(Outline.Polygon([.. tip, .. tail]), Paint.Of(Look.Ink), new(Look.Paper, 0.8)) { Class = "press" };
    }
}
