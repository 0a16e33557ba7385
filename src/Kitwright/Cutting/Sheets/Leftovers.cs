using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>
/// What is left of cloth that has been cut, as rectangles: ends of strips, what is trimmed off above a piece, and the end
/// of the length. Together with the pieces they are all the cloth, but for slivers beside pieces narrower than their
/// sub-cut and for what squaring takes.
/// </summary>
public static class Leftovers
{
    /// <summary>Leftovers are kept from a strip of 2 1/2 in on, each way (common practice, no source).</summary>
    public static Length UsualLeast { get; } = Length.Inches(2, 1, 2);

    /// <summary>Of all lengths of a plan, with the cloth that each is of: what the next plan can be cut from.</summary>
    public static ImmutableArray<ClothLeftover> Of(QuiltPlan plan) =>
        [
            .. plan.Cloths.SelectMany(cloth => Of(cloth, UsualLeast).Select(left => new ClothLeftover(cloth.Id, left.Width, left.Height, left.Count))),
        ];

    /// <summary>Of one length of fabric as it is bought. Its end holds the margin, if nothing goes wrong.</summary>
    /// <param name="least">Both sides are at least so long.</param>
    public static ImmutableArray<Leftover> Of(ClothPlan plan, Length least)
    {
        var demand = plan.Demand.GroupBy(d => d.Piece).ToDictionary(same => same.Key, same => same.First());
        Length Across(StackedPiece piece) => piece.Turned ? demand[piece.Piece].Width : demand[piece.Piece].Height;
        var found = new List<Leftover>();
        foreach (var section in plan.Sections)
        {
            var rest = plan.Terms.StripLength - section.Cuts.Aggregate(Length.Zero, (sum, cut) => sum + (cut.Width * cut.Times));
            found.AddRange(section.Cuts.Select(cut => new Leftover(cut.Width, section.Length - Across(cut.Stack[0]), cut.Times)));
            found.AddRange(OfStrips(section.Beside, rest, Across));
            found.Add(new(rest, section.Length - section.Beside.Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Times)), 1));
        }

        found.AddRange(OfStrips(plan.Strips, plan.Terms.StripLength, Across));
        found.AddRange(Ends(plan));
        return Kept(found, least);
    }

    /// <summary>The end of the length, or of each panel.</summary>
    private static IEnumerable<Leftover> Ends(ClothPlan plan)
    {
        if (plan.Panels is not { } panels || plan.Terms.Panel is not { } length)
        {
            return [new(plan.Terms.UsableWidth, plan.Purchase - plan.Cut, 1)];
        }

        var heights = plan.Strips.ToDictionary(strip => strip.Id, strip => strip.Height);
        return panels.Select(panel => new Leftover(
            plan.Terms.UsableWidth,
            length - panel.Strips.Aggregate(Length.Zero, (sum, strip) => sum + (heights[strip.Strip] * strip.Times)),
            panel.Times
        ));
    }

    /// <summary>Of equal sheets cut alike, all together.</summary>
    /// <param name="least">Both sides are at least so long.</param>
    public static ImmutableArray<Leftover> Of(SheetPlan plan, SheetCut cut, Length least)
    {
        var sheet = plan.Problem.Sheets.First(s => s.Id == cut.Sheet);
        var demand = plan.Problem.Demand.ToDictionary(d => d.Piece);
        var along = cut.First == FirstCut.Along;
        Length Across(StackedPiece piece) => piece.Turned == along ? demand[piece.Piece].Height : demand[piece.Piece].Width;
        var width = sheet.Width - plan.Problem.Terms.TrimAcross;
        var height = sheet.Height - plan.Problem.Terms.TrimAlong;
        var room = along ? height!.Value : width;
        var strips = cut.Strips.Select(strip => new StripCut(
            strip.Id,
            strip.Height,
            strip.Times,
            [.. strip.SubCuts.Select(sub => sub with { Times = sub.Times * strip.Layers })]
        ));
        var found = OfStrips(strips, room, Across).ToList();
        if ((along ? width : height) is { } up)
        {
            found.Add(new(room, up - cut.Strips.Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Times)), 1));
        }

        return Kept(found.Select(left => (along ? left.Swapped : left) with { Count = left.Count * cut.Times }), least);
    }

    private static IEnumerable<Leftover> OfStrips(IEnumerable<StripCut> strips, Length room, Func<StackedPiece, Length> across)
    {
        foreach (var strip in strips)
        {
            yield return new(room - strip.SubCuts.Aggregate(Length.Zero, (sum, cut) => sum + (cut.Width * cut.Times)), strip.Height, strip.Times);
            foreach (var cut in strip.SubCuts)
            {
                var stack = cut.Stack.Aggregate(Length.Zero, (sum, piece) => sum + (across(piece) * piece.Times));
                yield return new(cut.Width, strip.Height - stack, cut.Times * strip.Times);
            }
        }
    }

    /// <summary>Equal ones together, the largest first.</summary>
    private static ImmutableArray<Leftover> Kept(IEnumerable<Leftover> found, Length least) =>
        [
            .. found
                .Where(left => left.Width.Sign > 0 && left.Height.Sign > 0 && left.Width >= least && left.Height >= least)
                .GroupBy(left => (left.Width, left.Height))
                .Select(same => same.First() with { Count = same.Sum(left => left.Count) })
                .OrderByDescending(left => left.Width.InInches * left.Height.InInches)
                .ThenByDescending(left => left.Width),
        ];
}

/// <summary>Equal rectangles of cloth that are left.</summary>
/// <param name="Width">Across the fabric.</param>
/// <param name="Height">Along the fabric.</param>
public sealed record Leftover(Length Width, Length Height, int Count)
{
    internal Leftover Swapped => new(Height, Width, Count);
}

/// <summary>Equal rectangles that are left of one cloth of a plan.</summary>
/// <param name="Width">Across the fabric.</param>
/// <param name="Height">Along the fabric.</param>
public sealed record ClothLeftover(PathId Cloth, Length Width, Length Height, int Count);
