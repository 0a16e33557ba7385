namespace Kitwright.Geometry;

/// <summary>An arc as chords so fine that neither paper nor a screen shows them: for pictures, never for a measure.</summary>
public static class ArcPoints
{
    /// <summary>Three degrees: on a radius of 12 in the chord is within 1/200 in of the arc.</summary>
    private const double Step = Math.PI / 60;

    /// <summary>The places between the ends, without them.</summary>
    public static IEnumerable<(double X, double Y)> Between((double X, double Y) from, (double X, double Y) to, (double X, double Y) center, bool clockwise)
    {
        double startX = from.X - center.X,
            startY = from.Y - center.Y,
            endX = to.X - center.X,
            endY = to.Y - center.Y;
        var sweep = Math.Atan2((startX * endY) - (startY * endX), (startX * endX) + (startY * endY));
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
            var (sin, cos) = Math.SinCos(sweep * i / chords);
            yield return (center.X + (startX * cos) - (startY * sin), center.Y + (startX * sin) + (startY * cos));
        }
    }
}
