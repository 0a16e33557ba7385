using System.Collections.Immutable;

namespace Kitwright.WorkTimes;

/// <summary>How practiced the hands are.</summary>
public enum Practice
{
    Beginner,
    Experienced,
}

/// <summary>Normal times of operations, in seconds: what the work itself takes, without rest.</summary>
/// <remarks>
/// The usual times are common practice, no source: no published times were found for this work. They are meant to be
/// replaced by one's own.
/// </remarks>
public sealed record StandardTimes(ImmutableSortedDictionary<Operation, double> Seconds)
{
    public static StandardTimes Of(Practice practice) =>
        new(
            Usual.ToImmutableSortedDictionary(pair => pair.Key, pair => practice == Practice.Beginner ? pair.Value.Beginner : pair.Value.Experienced)
        );

    private static readonly Dictionary<Operation, (double Beginner, double Experienced)> Usual = new()
    {
        [Operation.CutStrip] = (75, 35),
        [Operation.SubCut] = (14, 6),
        [Operation.CutApart] = (12, 6),
        [Operation.LayPair] = (16, 7),
        [Operation.SewTenInches] = (12, 7),
        [Operation.StartChain] = (60, 30),
        [Operation.Press] = (20, 10),
        [Operation.Pin] = (20, 10),
        [Operation.Trim] = (60, 30),
    };

    public double Of(Operation operation, double count = 1) => Seconds[operation] * count;

    /// <summary>
    /// One's own times: measured operations as measured; the others by the mean ratio of own to usual time over those
    /// that were measured.
    /// </summary>
    /// <param name="measured">Seconds for a counted number of equal operations; counts and seconds above 0.</param>
    public StandardTimes With(ImmutableArray<MeasuredTime> measured)
    {
        var own = measured
            .GroupBy(m => m.Operation)
            .ToDictionary(same => same.Key, same => same.Sum(m => m.Seconds) / same.Sum(m => m.Count));
        if (own.Count == 0)
        {
            return this;
        }

        // Ratios are averaged as ratios: twice as fast and half as fast make equal.
        var ratio = Math.Exp(own.Average(pair => Math.Log(pair.Value / Seconds[pair.Key])));
        return new(Seconds.ToImmutableSortedDictionary(pair => pair.Key, pair => own.TryGetValue(pair.Key, out var seconds) ? seconds : pair.Value * ratio));
    }
}

/// <summary>A stack of equal operations, timed with a watch.</summary>
public sealed record MeasuredTime(Operation Operation, int Count, double Seconds);
