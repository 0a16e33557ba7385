using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Checking;

/// <summary>Measured and expected values as messages.</summary>
internal static class Say
{
    public static Message Inches(Length length) => Message.Of("check.inches", ("length", length));

    public static Message Inches(Surd length) =>
        length.IsRational ? Inches(Length.Inches(length.One)) : Message.Of("check.inches-exact", ("length", length.ToString()));

    public static Message Size(Surd width, Surd height) =>
        Message.Of("check.size", ("width", Inches(width)), ("height", Inches(height)));

    /// <param name="twiceArea">Twice the area, in square inches.</param>
    public static Message Area(Surd twiceArea) => Message.Of("check.area", ("area", (twiceArea / 2).ToString()));

    public static Message Count(BigInteger count) =>
        BigInteger.Abs(count) <= long.MaxValue
            ? Message.Of("check.count", ("count", (long)count))
            : Message.Plain(count.ToString(System.Globalization.CultureInfo.InvariantCulture));

    public static Message AtMost(Message value) => Message.Of("check.at-most", ("value", value));

    public static Message AtLeast(Message value) => Message.Of("check.at-least", ("value", value));

    public static Message Names(IEnumerable<string> names)
    {
        ImmutableArray<Message> list = [.. names.Distinct().Select(Message.Plain)];
        return list.IsEmpty ? Message.Of("check.nothing") : Message.Of("check.names", ("names", list));
    }
}
