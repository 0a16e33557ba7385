using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>An arc as chords so fine that paper does not show them.</summary>
internal static class ArcChords
{
    /// <summary>Three degrees: on a radius of 12 in the chord is within 1/200 in of the arc.</summary>
    private const double Step = Math.PI / 60;

    /// <summary>The places between the ends, without them.</summary>
    public static IEnumerable<Spot> Between(Spot from, Spot to, Spot center, bool clockwise)
    {
        Spot start = from - center,
            end = to - center;
        var sweep = Math.Atan2(Spot.Cross(start, end), Spot.Dot(start, end));
        if (clockwise && sweep > 0)
        {
            sweep -= 2 * Math.PI;
        }
        else if (!clockwise && sweep < 0)
        {
            sweep += 2 * Math.PI;
        }

        var chords = (int)Math.Ceiling(Math.Abs(sweep) / Step);
        for (var i = 1; i < chords; i++)
        {
            var angle = sweep * i / chords;
            double cos = Math.Cos(angle),
                sin = Math.Sin(angle);
            yield return center + new Spot((start.X * cos) - (start.Y * sin), (start.X * sin) + (start.Y * cos));
        }
    }
}
