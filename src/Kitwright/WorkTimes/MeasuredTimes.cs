using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Findings;

namespace Kitwright.WorkTimes;

/// <summary>One's own times as they are entered and kept: operation, count and seconds, as in <c>Press 20 190;SubCut 30 150</c>.</summary>
public static class MeasuredTimes
{
    private const int MostCount = 10_000;
    private const double MostSeconds = 86_400;

    /// <summary>What was counted and timed, as typed; null where both fields are empty: nothing was measured.</summary>
    /// <returns>A finding where one is missing, no number, not above 0, or beyond 10,000 operations or a day.</returns>
    public static (MeasuredTime? Value, Finding? Finding) Read(Operation operation, string? count, string? seconds)
    {
        if (string.IsNullOrWhiteSpace(count) && string.IsNullOrWhiteSpace(seconds))
        {
            return (null, null);
        }

        return int.TryParse(count, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number)
            && double.TryParse(seconds, NumberStyles.Float, CultureInfo.InvariantCulture, out var time)
            && number is > 0 and <= MostCount
            && time is > 0 and <= MostSeconds
            ? (new(operation, number, time), null)
            : (null, Findings.Finding.Of("times.bad", operation.ToString(), ("count", count ?? ""), ("seconds", seconds ?? "")));
    }

    public static string Write(ImmutableArray<MeasuredTime> times) =>
        string.Join(';', times.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Operation} {t.Count} {t.Seconds}")));

    /// <summary>What was kept; entries that are none are left out, so that a spoiled one does not take the others with it.</summary>
    public static ImmutableArray<MeasuredTime> Parse(string? kept) =>
        [
            .. (kept ?? "")
                .Split(';')
                .Select(entry => entry.Split(' ') is [var name, var count, var seconds] && Enum.GetNames<Operation>().Contains(name) ? Read(Enum.Parse<Operation>(name), count, seconds).Value : null)
                .OfType<MeasuredTime>(),
        ];
}
