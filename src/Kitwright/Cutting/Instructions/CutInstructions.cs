using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>
/// A cutting plan as a quilter writes it: square the end, then what lies along the selvage, then the widest strips first, one ruler setting after the
/// other. A line asks only for pieces that are still wanted, so the lines together give the demand exactly.
/// </summary>
public static class CutInstructions
{
    public static ImmutableArray<Message> Of(ClothPlan plan) => [.. Lines(plan).Select(line => line.Say)];

    /// <summary>The lines with the strip that each one cuts and the cloth used up to and including it.</summary>
    public static ImmutableArray<CutLine> Lines(ClothPlan plan)
    {
        var words = new StripWords(plan);
        var lines = ImmutableArray.CreateBuilder<CutLine>();
        var used = plan.Terms.Straightening;
        if (!used.IsZero)
        {
            lines.Add(new(null, Message.Of("chart.square-end", ("length", used)), used));
        }

        if (PrintWords.OfMatch(plan.Terms) is { } match)
        {
            lines.Add(new(null, match, used) { UsesCloth = false });
        }

        lines.AddRange(PrintWords.OfPanels(plan).Concat(RulerWords.Across(plan)).Concat(RulerWords.Along(plan)).Select(say => new CutLine(null, say, used) { UsesCloth = false }));
        foreach (var section in plan.Sections)
        {
            used += section.Length;
            // A section is drawn and ticked off as the strip of its length that it is cut as.
            lines.Add(new(new(section.Id, section.Length, 1, section.Cuts), words.Next(section), used));
            lines.AddRange(section.Beside.Select(strip => new CutLine(strip, words.Beside(section, strip), used)));
        }

        if (Layers(plan) is { } layers)
        {
            lines.Add(new(null, layers, used) { UsesCloth = false });
        }

        if (plan.Terms.Table is { SquareEvery: > 0 } table && !plan.SquaringAgain.IsZero)
        {
            lines.Add(new(null, Message.Of("chart.square-again", ("strips", table.SquareEvery), ("length", table.SquaringLoss)), used) { UsesCloth = false });
        }

        var cut = 0L;
        foreach (var same in InOrder(plan).GroupBy(strip => strip.Height))
        {
            // All strips of a height are cut under one setting of the ruler; what each of them becomes is said after it.
            var strips = same.ToImmutableArray();
            var count = strips.Sum(strip => (long)strip.Times);
            used += same.Key * count;
            cut += count;
            var reached = used + plan.Terms.SquaringAgain(cut);
            lines.AddRange(words.Run(strips).Select((say, i) => new CutLine(strips[i], say, reached) { UsesCloth = i == 0 }));
        }

        return lines.ToImmutable();
    }

    /// <summary>What a shop cuts where the customer does the rest: the end squared, lengths and strips.</summary>
    public static ImmutableArray<Message> FirstCuts(ClothPlan plan) =>
        [
            .. plan.Terms.Straightening.IsZero ? (ImmutableArray<Message>)[] : [Message.Of("chart.square-end", ("length", plan.Terms.Straightening))],
            .. Matched(plan),
            .. PrintWords.OfPanels(plan),
            .. RulerWords.Across(plan),
            .. plan.Sections.Select(s => Message.Of("chart.section-only", ("length", s.Length))),
            .. InOrder(plan).GroupBy(s => s.Height).Select(s => Message.Of("chart.strips-only", ("count", s.Sum(x => x.Times)), ("height", s.Key))),
        ];

    /// <summary>What is left to the customer then.</summary>
    public static ImmutableArray<Message> SubCuts(ClothPlan plan)
    {
        var words = new StripWords(plan);
        return
        [
            .. Layers(plan) is { } layers ? [layers] : (ImmutableArray<Message>)[],
            .. Matched(plan),
            .. RulerWords.Along(plan),
            .. plan.Sections.SelectMany(s => s.Beside.Select(strip => words.Beside(s, strip)).Prepend(words.SubCut(s))),
            .. InOrder(plan).Select(words.SubCut),
        ];
    }

    private static ImmutableArray<Message> Matched(ClothPlan plan) => PrintWords.OfMatch(plan.Terms) is { } match ? [match] : [];

    /// <summary>How strips are laid before they are sub-cut; null where each lies in one layer.</summary>
    private static Message? Layers(ClothPlan plan) =>
        plan.Terms.Table is { Layers: > 1 } table && !plan.Strips.IsEmpty ? Message.Of("chart.layers", ("layers", table.Layers)) : null;

    /// <summary>The strips as they are cut: widest first; the plan's own order among equals.</summary>
    public static ImmutableArray<StripCut> InOrder(ClothPlan plan) =>
        [.. plan.Strips.OrderByDescending(strip => strip.Height)];
}

/// <summary>One line of the cutting chart.</summary>
/// <param name="Strip">The strips that it cuts; null where the end is squared, and where it says how all strips are cut.</param>
/// <param name="Say">What to do.</param>
/// <param name="Used">Length of cloth used when it is done, in inches, straightening included.</param>
public sealed record CutLine(StripCut? Strip, Message Say, Length Used)
{
    /// <summary>False where nothing is taken off the cloth: the strips are cut by a line before it, or after it.</summary>
    public bool UsesCloth { get; init; } = true;
}
