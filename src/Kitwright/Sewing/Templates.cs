using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Quilts;

namespace Kitwright.Sewing;

/// <summary>Templates for all patches of a quilt's blocks, each shape once for each role; mirror images are shapes of their own.</summary>
public static class Templates
{
    /// <summary>Shorter edges need no mark in their middle.</summary>
    private const double LongEdge = 2;

    public static ImmutableArray<TemplatePiece> Of(Quilt quilt)
    {
        var design = Layout.Of(quilt);
        var placed = design.Placements.GroupBy(p => p.Block).ToDictionary(g => g.Key, g => g.Count());
        var roles = quilt.Roles.ToDictionary(r => r.Id, r => r.Name);
        var seam = quilt.Seam.InInches.ToDouble();
        var found = ImmutableArray.CreateBuilder<TemplatePiece>();
        foreach (var block in design.Blocks)
        {
            var drawn = BlockDesigns.Scaled(quilt.Block(BlockDesigns.BlockOf(block.Id)), Ratio(quilt, block));
            var mirror = BlockDesigns.IsMirrored(block.Id);
            var width = block.Width.InInches.ToDouble();
            var corners = drawn.Patches.SelectMany(p => p.Corners).Select(Spot.Of).ToArray();
            var shapes = drawn
                .Patches.Select(p => (p.Role, Line: SewingLine(p, mirror, width), Curves: ArcMarks.Of(p, corners).Select(m => (At: Lies(m.At), Center: Lies(m.Center))).ToArray()))
                .ToArray();
            Spot Lies(Spot at) => mirror ? new(width - at.X, at.Y) : at;
            foreach (var same in shapes.GroupBy(s => (s.Role, Key: Key(s.Line))))
            {
                var (_, line, curves) = same.First();
                found.Add(
                    new(
                        drawn.Name,
                        $"T{found.Count + 1}",
                        roles.GetValueOrDefault(same.Key.Role, same.Key.Role),
                        same.Count() * placed.GetValueOrDefault(block.Id),
                        line,
                        SeamOffset.Of(line, seam),
                        [.. Marks(line, shapes.SelectMany(s => s.Line).ToArray()), .. curves.Select(m => ArcMarks.On(line, m.At, m.Center))]
                    )
                );
            }
        }

        return WithHands(found.ToImmutable());
    }

    private static ImmutableArray<TemplatePiece> WithHands(ImmutableArray<TemplatePiece> pieces)
    {
        var hands = pieces.Select(piece => ShapeHand.Of(piece.Sewn)).ToArray();
        return
        [
            .. pieces.Zip(
                hands,
                (piece, hand) =>
                    piece with
                    {
                        HasHand = hand.HasHand,
                        Mirror = hand.HasHand ? pieces.Zip(hands).FirstOrDefault(other => other.First.Role == piece.Role && other.Second.Shape == hand.Mirrored).First?.Label : null,
                    }
            ),
        ];
    }

    /// <summary>A block that is a unit of a border has the border's size.</summary>
    private static Rational Ratio(Quilt quilt, BlockDesign block) => block.Width / quilt.Block(BlockDesigns.BlockOf(block.Id)).Width;

    private static ImmutableArray<Spot> SewingLine(BlockPatch patch, bool mirror, double width)
    {
        var line = new List<Spot>();
        for (var i = 0; i < patch.Corners.Length; i++)
        {
            var from = Spot.Of(patch.Corners[i]);
            line.Add(from);
            if (patch.Arcs.FirstOrDefault(a => a.Edge == i) is { } arc)
            {
                line.AddRange(ArcChords.Between(from, Spot.Of(patch.Corners[(i + 1) % patch.Corners.Length]), Spot.Of(arc.Center), arc.Clockwise));
            }
        }

        var lies = mirror ? line.Select(p => new Spot(width - p.X, p.Y)).ToList() : line;
        var twice = lies.Select((p, i) => Spot.Cross(p, lies[(i + 1) % lies.Count])).Sum();
        return twice < 0 ? [.. Enumerable.Reverse(lies)] : [.. lies];
    }

    /// <summary>Equal for shapes that a turn by quarters lays on one another.</summary>
    private static string Key(ImmutableArray<Spot> line) =>
        Enumerable
            .Range(0, 4)
            .Select(turns =>
            {
                var turned = line.Select(p => Enumerable.Repeat(0, turns).Aggregate(p, (q, _) => q.Left)).ToArray();
                double left = turned.Min(p => p.X),
                    low = turned.Min(p => p.Y);
                return string.Join(
                    ';',
                    turned.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X - left + 1e-7:0.00000},{p.Y - low + 1e-7:0.00000}")).Order(StringComparer.Ordinal)
                );
            })
            .Min(StringComparer.Ordinal)!;

    private static IEnumerable<TemplateMark> Marks(ImmutableArray<Spot> line, Spot[] corners)
    {
        for (var i = 0; i < line.Length; i++)
        {
            Spot from = line[i],
                to = line[(i + 1) % line.Length],
                step = (to - from).Unit;
            var length = (to - from).Length;
            var outward = step.Left * -1;
            var along = corners
                .Where(c => Math.Abs(Spot.Cross(step, c - from)) < 1e-6)
                .Select(c => Spot.Dot(step, c - from))
                .Where(a => a > 1e-6 && a < length - 1e-6)
                .Select(a => Math.Round(a, 6))
                .Distinct()
                .ToArray();
            foreach (var at in along.Length == 0 && length >= LongEdge ? [length / 2] : along)
            {
                yield return new(from + (step * at), outward);
            }
        }
    }
}
