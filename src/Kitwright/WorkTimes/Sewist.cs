using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Findings;

namespace Kitwright.WorkTimes;

/// <summary>Who sews: her own measured times, the rest she takes, and which hand holds the cutter.</summary>
/// <param name="Measured">Empty where none were taken.</param>
public sealed record Sewist(ImmutableArray<MeasuredTime> Measured, Allowances Allowances, bool LeftHanded)
{
    /// <summary>More rest than this is no work any more; shares in hundredths.</summary>
    private const double MostPercent = 50;

    public static Sewist Usual { get; } = new([], Allowances.Usual, false);

    /// <summary>Her own times; null where none were measured.</summary>
    public StandardTimes? Times => Measured.IsEmpty ? null : StandardTimes.Of(Practice.Experienced).With(Measured);

    /// <summary>As typed on a command line or kept in an address: nothing stated is as usual.</summary>
    /// <param name="times"><c>Press 20 190;SubCut 30 150</c>: operation, how many, in how many seconds.</param>
    /// <param name="personal">Hundredths of the shift for personal needs, 0 to 50.</param>
    /// <param name="fatigue">Hundredths of the work for rest, 0 to 50.</param>
    public static (Sewist Sewist, ImmutableArray<Finding> Findings) Read(string? times, string? personal, string? fatigue, bool leftHanded)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var measured = ImmutableArray.CreateBuilder<MeasuredTime>();
        foreach (var entry in (times ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (entry.Split(' ', StringSplitOptions.RemoveEmptyEntries) is not [var name, var count, var seconds]
                || !Enum.GetNames<Operation>().Contains(name, StringComparer.OrdinalIgnoreCase))
            {
                findings.Add(Finding.Of("times.entry", "times", ("entry", entry), ("names", string.Join(", ", Enum.GetNames<Operation>()))));
                continue;
            }

            var read = MeasuredTimes.Read(Enum.Parse<Operation>(name, ignoreCase: true), count, seconds);
            if (read.Value is { } time)
            {
                measured.Add(time);
            }
            else if (read.Finding is { } finding)
            {
                findings.Add(finding);
            }
        }

        return (
            new(
                measured.ToImmutable(),
                new(Share("personal", personal, Allowances.Usual.Personal), Share("fatigue", fatigue, Allowances.Usual.Fatigue)),
                leftHanded
            ),
            findings.ToImmutable()
        );

        double Share(string name, string? text, double usual)
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                return usual;
            }

            if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent is >= 0 and <= MostPercent)
            {
                return percent / 100;
            }

            findings.Add(Finding.Of("times.allowance", name, ("text", text)));
            return usual;
        }
    }
}
