using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>
/// The words for strips: "Cut 11 strips 2 1/8 in × WOF; sub-cut into 60 of 2 1/8 × 5 3/8 (B3)". Sizes name the side
/// along the strip's height first, as the ruler is set first. What has been said is taken off what is still wanted.
/// </summary>
internal sealed class StripWords(ClothPlan plan)
{
    // A class may be demanded in several lines.
    private readonly Dictionary<PathId, ClothDemand> demand = plan
        .Demand.GroupBy(d => d.Piece)
        .ToDictionary(same => same.Key, same => same.First());
    private readonly Dictionary<PathId, int> wanted = plan
        .Demand.GroupBy(d => d.Piece)
        .ToDictionary(same => same.Key, same => same.Sum(d => d.Count));

    /// <summary>
    /// The strips of one height: "Cut 12 strips 2 1/2 in × WOF. From 11 of them sub-cut 176 squares of 2 1/2 (A1).", then "From the other one sub-cut
    /// …". One message for each.
    /// </summary>
    public ImmutableArray<Message> Run(ImmutableArray<StripCut> strips) =>
        strips is [var only]
            ? [Alone(only)]
            : [.. strips.Select((strip, i) => i == 0 ? First(strips) : Of(strip, i == strips.Length - 1 ? "last" : "more"))];

    private Message First(ImmutableArray<StripCut> strips) =>
        Message.Of("chart.run", ("total", strips.Sum(strip => strip.Times)), ("height", strips[0].Height), ("first", Of(strips[0], "first")));

    private Message Of(StripCut strip, string place)
    {
        if (Whole(strip) is { } only)
        {
            var (_, room) = Give(only, strip.Times);
            return Message.Of("chart.keep", ("place", place), ("count", strip.Times), ("label", demand[only.Piece].Label), ("room", room));
        }

        return Message.Of("chart.from", ("place", place), ("count", strip.Times), ("parts", Parts(strip)));
    }

    private Message Alone(StripCut strip)
    {
        if (Whole(strip) is { } only)
        {
            var (_, room) = Give(only, strip.Times);
            return Message.Of(
                "chart.whole-strips",
                ("count", strip.Times),
                ("height", strip.Height),
                ("label", demand[only.Piece].Label),
                ("room", room)
            );
        }

        return Message.Of("chart.strips", ("count", strip.Times), ("height", strip.Height), ("parts", Parts(strip)));
    }

    private ImmutableArray<Message> Parts(StripCut strip) => [.. strip.SubCuts.Select(sub => Part(strip, sub))];

    /// <summary>"Cut a length of 86 1/2 in; along the selvage cut it into 2 of 86 1/2 × 6 1/2 (A4)".</summary>
    public Message Next(LengthwiseSection section) =>
        Message.Of(
            "chart.section",
            ("length", section.Length),
            ("parts", section.Cuts.Select(cut => Part(new(section.Id, section.Length, 1, section.Cuts), cut)).ToImmutableArray()),
            ("rest", Room(section).IsZero ? "none" : "some"),
            ("room", Room(section))
        );

    /// <summary>The same of a length that is cut off already.</summary>
    public Message SubCut(LengthwiseSection section) =>
        Message.Of(
            "chart.section-sub-cut",
            ("length", section.Length),
            ("parts", section.Cuts.Select(cut => Part(new(section.Id, section.Length, 1, section.Cuts), cut)).ToImmutableArray())
        );

    /// <summary>Of strips that are cut already: "Sub-cut the 3 strips of 2 1/2 in into 48 of 2 1/2 × 4 1/2 (B3)".</summary>
    public Message SubCut(StripCut strip) =>
        Whole(strip) is { } only
            ? Message.Of("chart.whole", ("count", strip.Times), ("height", strip.Height), ("label", demand[only.Piece].Label))
            : Message.Of(
                "chart.sub-cut",
                ("count", strip.Times),
                ("height", strip.Height),
                ("parts", Parts(strip))
            );

    public Message Beside(LengthwiseSection section, StripCut strip) =>
        Message.Of(
            "chart.beside",
            ("count", strip.Times),
            ("height", strip.Height),
            ("room", Room(section)),
            ("parts", Parts(strip))
        );

    private Length Room(LengthwiseSection section) =>
        plan.Terms.StripLength - section.Cuts.Aggregate(Length.Zero, (sum, cut) => sum + (cut.Width * cut.Times));

    /// <summary>The piece that the strip is as it is, such as a border or binding strip; null where something is left to cut.</summary>
    private StackedPiece? Whole(StripCut strip) =>
        strip.SubCuts is [{ Times: 1, Stack: [{ Times: 1 } only] } cut] && cut.Width == plan.Terms.StripLength && Size(only) == (strip.Height, cut.Width)
            ? only
            : null;

    private Message Part(StripCut strip, SubCut cut)
    {
        var cuts = strip.Times * cut.Times;
        if (cut.Stack is not [{ Times: 1 } only])
        {
            return Message.Of(
                "chart.stack",
                ("count", cuts),
                ("height", strip.Height),
                ("width", cut.Width),
                ("pieces", cut.Stack.Select(stacked => Pieces(stacked, cuts * stacked.Times)).ToImmutableArray())
            );
        }

        var pieces = Pieces(only, cuts);
        return Size(only) == (strip.Height, cut.Width)
            ? pieces
            : Message.Of("chart.trimmed", ("pieces", pieces), ("height", strip.Height), ("width", cut.Width));
    }

    private Message Pieces(StackedPiece piece, int holds)
    {
        var (count, room) = Give(piece, holds);
        var (height, width) = Size(piece);
        return Message.Of(
            height == width ? "chart.squares" : "chart.rectangles",
            ("count", count),
            ("height", height),
            ("width", width),
            ("label", demand[piece.Piece].Label),
            ("room", room)
        );
    }

    private (int Count, int Room) Give(StackedPiece piece, int holds)
    {
        var count = Math.Min(holds, wanted[piece.Piece]);
        wanted[piece.Piece] -= count;
        return (count, holds - count);
    }

    private (Length Height, Length Width) Size(StackedPiece piece)
    {
        var (width, height) = (demand[piece.Piece].Width, demand[piece.Piece].Height);
        return piece.Turned ? (width, height) : (height, width);
    }
}
