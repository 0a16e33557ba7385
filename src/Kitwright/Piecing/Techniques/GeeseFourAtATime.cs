using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Four flying geese from one large square and four small ones: two small squares lie on opposite corners, are sewn to
/// either side of the diagonal and cut apart; a third and a fourth make two geese of each half. The large square is
/// the finished width plus 1 1/4 in, the small ones the finished height plus 7/8 in ([SYL-FG], [BEV], [LIS], [ALQ]); 1/4 and
/// 1/8 in more where the geese are trimmed (common practice, no source).
/// </summary>
/// <remarks>The tips of the first two squares would overlap in the middle; they are trimmed to meet there.</remarks>
internal static class GeeseFourAtATime
{
    public const string Kind = "goose-four";

    /// <returns>Null in the poses where the goose does not stand on its base.</returns>
    public static Program? Make(Making m, Region region, string goose, ImmutableArray<StitchAndFlip.Corner> skies, bool trimmed)
    {
        if (region.Width != 2 * region.Height || skies[0].Index != 2 || skies[1].Index != 3)
        {
            return null;
        }

        var seams = m.Seams;
        Surd width = region.Width,
            height = region.Height,
            s = seams.Allowance;
        var over = trimmed ? seams.Generous : Length.Zero;
        Length large = seams.QuarterSquare(width) + (over * 2),
            // The skies must reach a seam allowance beyond the point.
            small = Length.Max(seams.HalfSquare(height) + over, ((large / 2) + seams.Allowance).RoundUpTo(seams.RulerStep));
        var body = Square(m, goose, large, width, "use.goose-four", "why.goose-four");
        var sky = Square(m, skies[0].Role, small, height, "use.sky-four", "why.sky-four");
        Surd side = large,
            a = small,
            half = Surd.OfRoot2(1) * s / 2;
        Line rising = new(new(0, 0), new(side, side)),
            falling = new(new(side, 0), new(0, side));
        Point left = new(-half, half),
            right = new(half, half);
        var verbs = new List<Verb>
        {
            new Take("pair", body.Id, Motion.Identity),
            new Take("sky1", sky.Id, Motion.Identity),
            new CutAlong("sky1", falling, "sky1", null),
            new Take("sky2", sky.Id, Motion.Shift(side - a, side - a)),
            new CutAlong("sky2", falling.Reversed, "sky2", null),
            new Lay("pair", "pair", "sky1", Motion.Reflect(rising)),
            new Lay("pair", "pair", "sky2", Motion.Reflect(rising)),
            new Sew("pair", Shifted(rising, left)),
            new Sew("pair", Shifted(rising, -left)),
            new CutAlong("pair", rising, "one", "two"),
            new Press("one", PressToward.Top),
            new Press("two", PressToward.Top),
            new Turn("two", Motion.QuarterTurns(2).Then(Motion.Shift(side, side))),
        };
        var makes = new List<string>();
        var apex = new Point(width / 2, height);
        foreach (var name in new[] { "one", "two" })
        {
            var next = name + "-sky";
            verbs.Add(new Take(next, sky.Id, Motion.Shift(0, side - a)));
            verbs.Add(new Lay(name, name, next, Motion.Reflect(falling)));
            verbs.Add(new Sew(name, Shifted(falling, right)));
            verbs.Add(new Sew(name, Shifted(falling, -right)));
            // Direction down to the right: the upper goose lies to the left.
            verbs.Add(new CutAlong(name, falling.Reversed, name + "-top", name + "-left"));
            Finish(name + "-top", Motion.QuarterTurns(2), new Point(side / 2, (side / 2) + (2 * half)));
            Finish(name + "-left", Motion.QuarterTurns(1), new Point((side / 2) - (2 * half), side / 2));
        }

        return new(Kind, [.. verbs], [.. makes], Message.Of("unit.goose", ("goose", m.Letters.Of(goose)), ("sky", m.Letters.Of(skies[0].Role))));

        // The goose is turned to stand on its base, its point where the two seams meet.
        void Finish(string register, Motion turn, Point point)
        {
            var turned = turn.Apply(point);
            verbs.Add(new Press(register, PressToward.Top));
            verbs.Add(new Turn(register, turn.Then(Motion.Shift(apex.X - turned.X, apex.Y - turned.Y))));
            verbs.Add(new Trim(register, Polygon.Rectangle(-s, -s, width + s, height + s), trimmed));
            makes.Add(register);
        }
    }

    private static Line Shifted(Line line, Point by) => new(line.From + by, line.To + by);

    private static PieceBook.Entry Square(Making m, string role, Length side, Surd finished, string use, string why)
    {
        var known = m.Seams.Known(finished);
        return m.Book.Piece(role, side, side, mayTurn: true, Message.Of(use), Message.Of(why, ("finished", known), ("added", side - known), ("cut", side)));
    }
}
