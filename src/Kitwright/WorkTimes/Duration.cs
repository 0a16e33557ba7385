using Kitwright.Words;

namespace Kitwright.WorkTimes;

/// <summary>How a time is told that nobody can know exactly: rounded up, more coarsely the longer it is.</summary>
public static class Duration
{
    private const int Minute = 60;
    private const int Hour = 60 * Minute;

    /// <summary>Minutes, by ones up to ten, by fives up to two hours, by half hours up to ten, by hours up to forty, then by fives.</summary>
    public static int Minutes(double seconds)
    {
        var step =
            seconds <= 10 * Minute ? Minute
            : seconds <= 2 * Hour ? 5 * Minute
            : seconds <= 10 * Hour ? Hour / 2
            : seconds <= 40 * Hour ? Hour
            : 5 * Hour;
        return (int)(Math.Ceiling(seconds / step) * (step / Minute));
    }

    public static Message Say(double seconds)
    {
        var minutes = Minutes(seconds);
        return minutes < 120 && minutes % 60 != 0 ? Message.Of("time.minutes", ("minutes", minutes))
            : minutes % 60 == 0 ? Message.Of("time.hours", ("hours", minutes / 60))
            : Message.Of("time.half", ("hours", minutes / 60));
    }
}
