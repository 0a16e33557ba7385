using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A row of rectangles of one height, as in a four-patch, nine-patch or rail fence: long strips are sewn side by side
/// and cut across into as many rows as they hold ([GQP9]).
/// </summary>
internal static class StripSet
{
    public const string Kind = "strip-set";

    /// <summary>What squaring the ends of a strip set takes: [GQP9] cuts three segments and 1 in.</summary>
    private static readonly Length Squaring = Length.Inch;

    /// <summary>The pose with the row level.</summary>
    public static bool Fits(Region region) =>
        region.Items.Length > 1
        && region.IsRectangle
        && region.Items.All(i =>
            i is { Role: not null, InBorder: false, InSetting: false }
            && Shapes.IsRectangle(i.Shape)
            && i.Shape.Bounds() is var (low, high)
            && low.Y == region.Bounds.Low.Y
            && high.Y == region.Bounds.High.Y
        );

    /// <returns>Null where too few are wanted, or the strips would be too short for two.</returns>
    public static Program? Make(Making m, Region region)
    {
        var seams = m.Seams;
        var segment = seams.Rectangle(region.Height);
        var most = (int)((m.StripLength - Squaring) / segment).Floor();
        if (m.Wanted < 2 || most < 2)
        {
            return null;
        }

        // As many rows from each set, so that the last is no longer than it need be.
        var sets = (m.Wanted + most - 1) / most;
        var rows = (m.Wanted + sets - 1) / sets;
        var length = (segment * rows) + Squaring;
        Surd s = seams.Allowance;
        var verbs = new List<Verb>();
        foreach (var (i, item) in region.Items.OrderBy(i => i.Shape.Bounds().Low.X).Index())
        {
            var (low, high) = item.Shape.Bounds();
            var width = seams.Rectangle(high.X - low.X);
            var strip = Strip(m, item.Role!, length, width, segment, rows);
            verbs.Add(PieceBook.TakeAt(i == 0 ? "set" : "next", strip, width, low.X - s, -s));
            if (i > 0)
            {
                var line = new Line(new(low.X, 0), new(low.X, 1));
                verbs.Add(new Lay("set", "set", "next", Motion.Reflect(line)));
                verbs.Add(new Sew("set", line));
                verbs.Add(new Press("set", i % 2 == 1 ? PressToward.Top : PressToward.Bottom));
            }
        }

        var makes = Enumerable.Range(1, rows).Select(n => $"row{n}").ToArray();
        for (var n = 0; n < rows; n++)
        {
            var level = ((Surd)(segment * (n + 1))) - s;
            verbs.Add(new CutAlong("set", new(new(0, level), new(1, level)), n < rows - 1 ? "set" : null, makes[n]));
            verbs.Add(new Turn(makes[n], Motion.Shift(0, -(Surd)(segment * n))));
        }

        return new(Kind, [.. verbs], [.. makes], Message.Of("unit.strip-set", ("parts", region.Items.Length)));
    }

    private static PieceBook.Entry Strip(Making m, string role, Length length, Length width, Length segment, int rows) =>
        m.Book.Piece(
            role,
            length,
            width,
            mayTurn: false,
            Message.Of("use.strip-set"),
            Message.Of(
                "why.strip-set",
                ("finished", width - m.Seams.Both),
                ("seams", m.Seams.Both),
                ("cut", width),
                ("rows", rows),
                ("segment", segment),
                ("squaring", Squaring),
                ("length", length)
            )
        );
}
