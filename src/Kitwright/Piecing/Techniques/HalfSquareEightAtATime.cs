using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Two large squares right sides together, sewn a seam allowance to either side of both diagonals, then cut in quarters
/// and on the diagonals: eight half-square triangle units. The squares are twice the finished side plus 7/8 in
/// ([APQ19], [CRAFT], [EWE]), or plus 1 in and trimmed ([PAM]).
/// </summary>
internal static class HalfSquareEightAtATime
{
    public const string Kind = "half-square-eight";

    /// <summary>A quarter of the square by its place, and the motion that takes it to the lower left one.</summary>
    private readonly record struct Quarter(string Name, Motion Home);

    public static Program Make(Making m, Surd finished, string upper, string lower, bool trimmed)
    {
        var seams = m.Seams;
        var quarter = trimmed ? seams.HalfSquare(finished) + seams.Generous : seams.HalfSquare(finished);
        var side = quarter * 2;
        var (below, above) = (Square(m, upper, finished, side, trimmed), Square(m, lower, finished, side, trimmed));
        Surd q = quarter,
            across = Surd.OfRoot2(1) * seams.Allowance,
            low = -(Surd)seams.Allowance - ((q - across - finished - (2 * (Surd)seams.Allowance)) / 2);
        Line rising = new(new(0, 0), new(2 * q, 2 * q)),
            falling = new(new(2 * q, 0), new(0, 2 * q)),
            home = new(new(0, 0), new(q, q));
        Point left = new(-across / 2, across / 2),
            right = new(across / 2, across / 2);
        List<Verb> verbs =
        [
            new Take("a", below.Id, Motion.Identity),
            new Take("b", above.Id, Motion.Identity),
            new Lay("pair", "a", "b", Motion.Reflect(rising)),
            new Sew("pair", Shifted(rising, left)),
            new Sew("pair", Shifted(rising, -left)),
            new Sew("pair", Shifted(falling, right)),
            new Sew("pair", Shifted(falling, -right)),
            new CutAlong("pair", new(new(q, 0), new(q, 1)), "left", "right"),
            new CutAlong("left", new(new(0, q), new(1, q)), "left-top", "left-bottom"),
            new CutAlong("right", new(new(0, q), new(1, q)), "right-top", "right-bottom"),
        ];
        Quarter[] quarters =
        [
            new("left-bottom", Motion.Identity),
            new("right-top", Motion.Shift(-q, -q)),
            new("left-top", Motion.Shift(0, -q).Then(Motion.QuarterTurns(1)).Then(Motion.Shift(q, 0))),
            new("right-bottom", Motion.Shift(-q, 0).Then(Motion.QuarterTurns(1)).Then(Motion.Shift(q, 0))),
        ];
        var makes = new List<string>();
        foreach (var (name, toHome) in quarters)
        {
            var back = toHome.Inverse();
            string one = name + "-1",
                two = name + "-2";
            verbs.Add(new CutAlong(name, back.Apply(home), one, two));
            verbs.Add(new Press(one, PressToward.Top));
            verbs.Add(new Press(two, PressToward.Top));
            verbs.Add(new Turn(one, toHome.Then(Motion.Shift(low, low - across))));
            verbs.Add(new Turn(two, toHome.Then(Motion.QuarterTurns(2)).Then(Motion.Shift(q + low, q - across + low))));
            var unit = Polygon.Rectangle(-seams.Allowance, -seams.Allowance, finished + seams.Allowance, finished + seams.Allowance);
            verbs.Add(new Trim(one, unit, trimmed));
            verbs.Add(new Trim(two, unit, trimmed));
            makes.AddRange([one, two]);
        }

        return new(Kind, [.. verbs], [.. makes], Message.Of("unit.half-square", ("first", m.Letters.Of(upper)), ("second", m.Letters.Of(lower))));
    }

    private static Line Shifted(Line line, Point by) => new(line.From + by, line.To + by);

    private static PieceBook.Entry Square(Making m, string role, Surd finished, Length side, bool trimmed)
    {
        var known = m.Seams.Known(finished);
        return m.Book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use.half-square-eight"),
            Message.Of(
                trimmed ? "why.half-square-eight-trimmed" : "why.half-square-eight",
                ("finished", known),
                ("added", (side / 2) - known),
                ("cut", side),
                ("unit", m.Seams.Rectangle(finished))
            )
        );
    }
}
