using System.Collections.Immutable;

namespace Kitwright.Accuracy;

/// <summary>
/// Sews a quilt many times over, unit by unit and seam by seam, each cut, seam and fold a little off.
/// </summary>
/// <remarks>
/// What is assumed. Edges that are to be joined and differ are eased: the seam comes out as long as they are in the
/// mean; where two neighbors differ by more than <see cref="MostEased"/> a pleat is counted. Borders are cut to the
/// measure of the quilt. Trimmed work: units of a technique, and units whose last part is plain cloth, are cut generous
/// and squared up, so that they are off by the trim alone, unless they came out smaller than generous allows for.
/// </remarks>
internal sealed class Simulation(QuiltShape quilt, Hands hands, double generous, bool trimmed)
{
    /// <summary>Inches: half a seam allowance can be eased in along a block (common practice, no source).</summary>
    public const double MostEased = 1.0 / 8;

    private const int Shares = 16;

    private readonly double takeDeviation = Math.Sqrt(hands.TakeVariance);

    /// <summary>The same seed gives the same answer, whatever number of cores works on it.</summary>
    public Sewn Run(int quilts, ulong seed)
    {
        var shares = new Tally[Shares];
        Parallel.For(
            0,
            Shares,
            share =>
            {
                var tally = shares[share] = new();
                var dice = new Dice(seed + (ulong)share);
                for (var i = quilts * share / Shares; i < quilts * (share + 1) / Shares; i++)
                {
                    var (across, up) = Sew(quilt.Units.Length - 1, dice, tally);
                    tally.Top(across, up);
                }
            }
        );
        return Sewn.Of(shares, quilts);
    }

    private (double Across, double Up) Sew(int index, Dice dice, Tally tally)
    {
        var unit = quilt.Units[index];
        var (across, up) = unit.Parts.IsEmpty
            ? (Technique(unit.ShrinkAcross, dice), Technique(unit.ShrinkUp, dice))
            : Join(unit, dice, tally);
        if (unit.Trimmed || (trimmed && (unit.Parts.IsEmpty || unit.Plain)))
        {
            across = Trim(across, unit.Trimmed, dice, tally);
            up = Trim(up, unit.Trimmed, dice, tally);
        }

        if (unit.IsBlock)
        {
            tally.Block(across, up);
        }

        return (across, up);
    }

    private double Technique(double shrink, Dice dice) =>
        hands.CutBias + (hands.CutSpread * dice.Normal()) - (shrink / 2 * (hands.Take + (takeDeviation * dice.Normal())));

    private double Trim(double raw, bool always, Dice dice, Tally tally)
    {
        var spare = raw + generous;
        tally.Trims++;
        if (spare < 0 && !always)
        {
            tally.TooSmall++;
            return spare;
        }

        return hands.TrimSpread * dice.Normal();
    }

    private (double Across, double Up) Join(UnitShape unit, Dice dice, Tally tally)
    {
        double along = 0,
            across = 0,
            before = 0;
        var edges = 0;
        var cuts = 0;
        for (var i = 0; i < unit.Parts.Length; i++)
        {
            var part = unit.Parts[i];
            double x;
            if (part.Unit < 0)
            {
                cuts++;
                x = part.Fitted ? 0 : hands.CutBias + (hands.CutSpread * dice.Normal());
            }
            else
            {
                (var a, x) = Turned(Sew(part.Unit, dice, tally), part.Turned);
                along += a;
            }

            if (!part.Fitted)
            {
                if (edges > 0 && Math.Abs(x - before) > MostEased)
                {
                    tally.Pleats++;
                }

                across += x;
                before = x;
                edges++;
            }
        }

        // Along the row only the sum of cuts and seams tells: one number with the sum of their variances stands for all.
        var seams = unit.Parts.Length - 1;
        along += (cuts * hands.CutBias) - (seams * hands.Take) + (Math.Sqrt((cuts * hands.CutVariance) + (seams * hands.TakeVariance)) * dice.Normal());
        across = edges == 0 ? 0 : across / edges;
        return unit.Along ? (along, across) : (across, along);
    }

    private static (double, double) Turned((double Across, double Up) size, bool turned) => turned ? (size.Up, size.Across) : size;
}
