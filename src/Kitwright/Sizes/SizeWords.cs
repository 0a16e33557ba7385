using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Sizes;

/// <summary>What is said about a way to a size.</summary>
public static class SizeWords
{
    /// <summary>The counts, the block, the sashing and the borders.</summary>
    public static Message Way(SizeWay way) =>
        Message.Of(
            "sizes.way",
            ("columns", way.Choice.Columns),
            ("rows", way.Choice.Rows),
            ("block", way.Choice.Block),
            ("sashing", way.Choice.Sash is { } sash ? Message.Of("sizes.sash", ("width", sash)) : Message.Of("sizes.no-sash")),
            ("borders", way.Choice.Borders.IsEmpty ? Message.Of("sizes.no-border") : Message.Of("sizes.borders", ("widths", Widths(way))))
        );

    /// <summary>The finished top, and how far it is from the target.</summary>
    public static Message Size(SizeWay way) =>
        Message.Of(
            "sizes.size",
            ("width", way.Width),
            ("height", way.Height),
            ("off", way.Miss.IsZero ? Message.Of("sizes.exact") : Message.Of("sizes.off", ("across", Off(way, way.OverWidth, "across")), ("down", Off(way, way.OverHeight, "down"))))
        );

    private static System.Collections.Immutable.ImmutableArray<Message> Widths(SizeWay way) =>
        [.. way.Choice.Borders.Select(width => Message.Of("sizes.border", ("width", width)))];

    private static Message Off(SizeWay size, Length over, string way) =>
        Message.Of(
            "sizes.by",
            ("by", Rounded(over.Sign < 0 ? -over : over, size.Units)),
            ("way", over.Sign switch { 0 => "same", > 0 => way == "across" ? "wider" : "longer", _ => way == "across" ? "narrower" : "shorter" })
        );

    // A share of draw-up leaves fractions that no ruler shows; up to the next quarter inch or 5 mm.
    private static Length Rounded(Length length, LengthUnit units)
    {
        var step = units == LengthUnit.Centimeter ? Length.Millimeters(5) : Length.Inches(0, 1, 4);
        return step * (length / step).Ceiling();
    }
}
