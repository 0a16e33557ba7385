namespace Kitwright.Fabrics.Prints;

/// <summary>Turns in steps of 15 degrees, from a fixed table in thousandths.</summary>
internal static class Turn
{
    public const int Steps = 24;

    // sin(0°), sin(15°) … sin(90°), times 1000.
    private static readonly int[] Sines = [0, 259, 500, 707, 866, 966, 1000];

    public static TilePoint Of(TilePoint point, int steps, TilePoint about)
    {
        int sin = Sine(steps),
            cos = Sine(steps + 6);
        return new(
            about.X + (((point.X * cos) - (point.Y * sin)) / 1000),
            about.Y + (((point.X * sin) + (point.Y * cos)) / 1000)
        );
    }

    private static int Sine(int steps)
    {
        var at = ((steps % Steps) + Steps) % Steps;
        return at switch
        {
            <= 6 => Sines[at],
            <= 12 => Sines[12 - at],
            <= 18 => -Sines[at - 12],
            _ => -Sines[24 - at],
        };
    }
}
