using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>Which way the up of a directional print must run in what is pieced.</summary>
/// <param name="Eighths">Eighths of a turn, counterclockwise, from straight up; below 8, and below 4 where up and down look alike.</param>
/// <param name="TwoWay">Whether the print looks alike upside down.</param>
internal readonly record struct PrintUp(int Eighths, bool TwoWay)
{
    private const int WholeTurn = 8;

    private int Period => TwoWay ? WholeTurn / 2 : WholeTurn;

    public PrintUp Turned(int eighths) => this with { Eighths = (((Eighths + eighths) % Period) + Period) % Period };

    public PrintUp Moved(Motion motion) => Turned(EighthsOf(motion));

    /// <summary>How many quarter turns bring up on the cloth to where it must run; null where it runs at 45 degrees to the threads.</summary>
    public int? Quarters => Eighths % 2 == 0 ? Eighths / 2 : null;

    /// <summary>By how many eighths a motion turns; it is one that turns by eighths and does not mirror.</summary>
    public static int EighthsOf(Motion motion) =>
        (motion.XX.Sign, motion.YX.Sign) switch
        {
            (1, 0) => 0,
            (1, 1) => 1,
            (0, 1) => 2,
            (-1, 1) => 3,
            (-1, 0) => 4,
            (-1, -1) => 5,
            (0, -1) => 6,
            _ => 7,
        };
}
