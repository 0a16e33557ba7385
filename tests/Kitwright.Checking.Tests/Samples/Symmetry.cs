using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>
/// The same plan, drawn and sewn turned or mirrored: each block, unit and the top in its own rectangle, so that a
/// frame's lower left corner is the origin again. Pieces are cut as before.
/// </summary>
internal static class Symmetry
{
    /// <param name="index">0–3: quarter turns; 4–7: mirrored left to right first.</param>
    public static QuiltPlan Of(QuiltPlan plan, int index)
    {
        var blocks = plan.Design.Blocks.ToDictionary(b => b.Id, b => Frame(index, b.Width, b.Height));
        var seams = plan.Seam * 2;
        var units = plan
            .Sewing.Recipes.GroupBy(r => r.Id)
            .ToDictionary(g => g.Key, g => Frame(index, g.First().Width - seams, g.First().Height - seams));
        var pieces = plan.Pieces.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
        var top = Frame(index, plan.Design.Width, plan.Design.Height);
        var flips = index >= 4;
        var swaps = index % 2 == 1;
        return plan with
        {
            Design = new(
                swaps ? plan.Design.Height : plan.Design.Width,
                swaps ? plan.Design.Width : plan.Design.Height,
                [
                    .. plan.Design.Blocks.Select(b =>
                        b with
                        {
                            Width = swaps ? b.Height : b.Width,
                            Height = swaps ? b.Width : b.Height,
                            Patches = [.. b.Patches.Select(p => Drawn(p, blocks[b.Id]))],
                        }
                    ),
                ],
                [.. plan.Design.Placements.Select(p => Placed(p, top))],
                [.. plan.Design.Patches.Select(p => Drawn(p, top))]
            ),
            Sewing = new([.. plan.Sewing.Recipes.Select(Sewn)]),
            Backing = plan.Backing with
            {
                Width = swaps ? plan.Backing.Height : plan.Backing.Width,
                Height = swaps ? plan.Backing.Width : plan.Backing.Height,
                Across = plan.Backing.Across != swaps,
            },
            Needs = plan.Needs with
            {
                Batting = swaps ? new(plan.Needs.Batting!.Height, plan.Needs.Batting.Width) : plan.Needs.Batting,
            },
        };

        Placement Placed(Placement p, Motion frame) =>
            blocks.TryGetValue(p.Block, out var block) ? p with { Motion = block.Inverse().Then(p.Motion).Then(frame) } : p;

        Patch Drawn(Patch p, Motion frame) => p with { Shape = p.Shape.Moved(frame) };

        Recipe Sewn(Recipe r)
        {
            var frame = units[r.Id];
            return r with
            {
                Width = swaps ? r.Height : r.Width,
                Height = swaps ? r.Width : r.Height,
                Verbs = [.. r.Verbs.Select(v => MovedVerb(v, frame))],
                Picture = new(
                    [.. r.Picture.Patches.Select(p => Drawn(p, frame))],
                    [.. r.Picture.Tiles.Select(t => Placed(t, frame))],
                    [.. r.Picture.Parts.Select(p => p with { Outline = p.Outline.Moved(frame) })]
                ),
            };
        }

        Verb MovedVerb(Verb verb, Motion frame) =>
            verb switch
            {
                // A rectangle mirrored on its own middle is itself, and stays right side up.
                Take t => t with { Motion = (flips && pieces.TryGetValue(t.Piece, out var p) ? MirrorAcross(p.Width) : Motion.Identity).Then(t.Motion).Then(frame) },
                Use u => u with { Motion = (units.TryGetValue(u.Unit, out var unit) ? unit.Inverse() : Motion.Identity).Then(u.Motion).Then(frame) },
                Turn t => t with { Motion = frame.Inverse().Then(t.Motion).Then(frame) },
                Lay l => l with { Motion = frame.Inverse().Then(l.Motion).Then(frame) },
                Sew s => s with { Line = frame.Apply(s.Line) },
                CutAlong c => c with { Line = flips ? frame.Apply(c.Line).Reversed : frame.Apply(c.Line) },
                Trim t => t with { Rectangle = t.Rectangle.Moved(frame) },
                _ => verb,
            };
    }

    private static Motion MirrorAcross(Length width) => new(-1, 0, 0, 1, width, 0);

    private static Motion Frame(int index, Length width, Length height)
    {
        var mirrored = index >= 4 ? MirrorAcross(width) : Motion.Identity;
        return mirrored.Then(
            (index % 4) switch
            {
                0 => Motion.Identity,
                1 => Motion.QuarterTurns(1).Then(Motion.Shift(height, 0)),
                2 => Motion.QuarterTurns(2).Then(Motion.Shift(width, height)),
                _ => Motion.QuarterTurns(3).Then(Motion.Shift(0, width)),
            }
        );
    }
}
