using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>Where the pieces of one sheet lie, from its upper left corner: what drawings are made from.</summary>
public static class SheetLayout
{
    public static IEnumerable<SheetBox> Of(SheetPlan plan, SheetCut cut)
    {
        var along = cut.First == FirstCut.Along;
        var demand = plan.Problem.Demand.ToDictionary(d => d.Piece);
        var up = Length.Zero;
        foreach (var strip in cut.Strips)
        {
            for (var n = 0; n < strip.Times; n++)
            {
                var across = Length.Zero;
                foreach (var sub in strip.SubCuts.SelectMany(s => Enumerable.Repeat(s, s.Times * strip.Layers)))
                {
                    var at = up;
                    foreach (var piece in sub.Stack.SelectMany(p => Enumerable.Repeat(p, p.Times)))
                    {
                        var asked = demand[piece.Piece];
                        var (width, height) = piece.Turned ? (asked.Height, asked.Width) : (asked.Width, asked.Height);
                        yield return along ? new(piece.Piece, asked.Label, at, across, width, height) : new(piece.Piece, asked.Label, across, at, width, height);
                        at += along ? width : height;
                    }

                    across += sub.Width;
                }

                up += strip.Height;
            }
        }
    }
}

/// <summary>One piece on a sheet; lengths from the left and from the top.</summary>
public sealed record SheetBox(PathId Piece, string Label, Length Left, Length Top, Length Width, Length Height);
