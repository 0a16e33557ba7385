using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Blocks;

/// <summary>The log-cabin family by its parameters, in units of any size.</summary>
/// <param name="Center">Side of the center square.</param>
/// <param name="Light">Width of a light log.</param>
/// <param name="Dark">Width of a dark log; another than the light one moves the center off the middle.</param>
/// <param name="Rounds">Circuits of logs.</param>
/// <param name="Start">Side of the first log.</param>
/// <param name="Clockwise">Which way the logs go round.</param>
/// <param name="Tones">How many light and how many dark fabrics the rounds run through, from the center out.</param>
/// <param name="Cornerstones">Whether a square stands where a log meets the next.</param>
/// <param name="Units">Units built into corners or logs, in place of plain cloth.</param>
public sealed record LogCabinPlan(
    LogLay Lay,
    Rational Center,
    Rational Light,
    Rational Dark,
    int Rounds,
    LogSide Start,
    bool Clockwise,
    int Tones,
    bool Cornerstones,
    ImmutableArray<LogUnit> Units
);

/// <summary>How the logs are laid.</summary>
public enum LogLay
{
    /// <summary>One after the other round the center: two light, two dark.</summary>
    Round,

    /// <summary>In opposite pairs: the first pair light, the second dark.</summary>
    CourthouseSteps,

    /// <summary>On two sides only, so that the center is a corner of the block.</summary>
    Quarter,
}

public enum LogSide
{
    Right,
    Top,
    Left,
    Bottom,
}

/// <summary>A unit in a log: at its first or last end, or in its middle.</summary>
/// <param name="Round">From 1, the innermost.</param>
/// <param name="Side">The side of the log.</param>
/// <param name="At">Where in the log.</param>
/// <param name="Kind">What is built in.</param>
public readonly record struct LogUnit(int Round, LogSide Side, LogPlace At, LogUnitKind Kind);

public enum LogPlace
{
    /// <summary>The end that is reached first going round counterclockwise.</summary>
    First,
    Last,
    Middle,
}

public enum LogUnitKind
{
    HalfSquare,
    Hourglass,

    /// <summary>One goose, twice as long as the log is wide, pointing outward.</summary>
    FlyingGoose,
}

/// <summary>A pineapple by its parameters, in units of any size.</summary>
/// <param name="Center">Side of the center square.</param>
/// <param name="Strip">Width of every strip, straight or diagonal; less than half the center.</param>
public sealed record PineapplePlan(Rational Center, Rational Strip, int Rounds);
