using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>
/// Takes the pieces of a unit so that directional prints run as they must when it is sewn: which side of a rectangle
/// lies across the cloth follows from the way that the piece goes through the unit's acts. A way of making the unit that
/// would turn one piece of cloth differently in two copies, or lay it off the threads, keeps no print.
/// </summary>
internal static class UprightPieces
{
    /// <summary>A cut piece, by its place among the verbs, and how it has been turned since it was taken.</summary>
    private readonly record struct Gone(int Take, Motion Way);

    /// <summary>What lies in a register: of two layers the upper one apart, with the direction of the seam that holds it.</summary>
    private sealed record Lying(ImmutableArray<Gone> Bottom, ImmutableArray<Gone> Top, Line? Seam)
    {
        public static Lying Flat(ImmutableArray<Gone> pieces) => new(pieces, [], null);

        public ImmutableArray<Gone> All => [.. Bottom, .. Top];
    }

    public static bool HasPrints(Region region) => region.Items.Any(item => item.Up is not null);

    /// <summary>The program with its pieces taken upright; null where it cannot keep the prints so.</summary>
    public static Program? Keep(Program program, Region region, PieceBook book)
    {
        if (!HasPrints(region))
        {
            return program;
        }

        if (Ways(program) is not { } ways)
        {
            return null;
        }

        var verbs = program.Verbs.ToArray();
        foreach (var gone in ways.GroupBy(gone => gone.Take))
        {
            var take = (Take)verbs[gone.Key];
            PrintUp?[] ups = [.. region.Items.Where(item => item.Role == book.Of(take.Piece).Role).Select(item => item.Up).Distinct()];
            if (ups is [null])
            {
                continue;
            }

            PrintUp[] onCloth = ups is [{ } up] ? [.. gone.Select(g => up.Turned(-PrintUp.EighthsOf(g.Way))).Distinct()] : [];
            if (onCloth is not [var only] || gone.Any(g => g.Way.Mirrors) || Standing(take, only, book) is not { } standing)
            {
                return null;
            }

            verbs[gone.Key] = standing;
        }

        return program with { Verbs = [.. verbs] };
    }

    /// <summary>The one piece of a patch, taken upright where it is laid and nothing more is done to it; null where it cannot be.</summary>
    public static Take? Keep(Take take, Item item, PieceBook book) =>
        item.Up is { } up ? Standing(take, up.Turned(-PrintUp.EighthsOf(take.Motion)), book) : take;

    /// <param name="up">Where the print's up must run on the piece as it is taken.</param>
    private static Take? Standing(Take take, PrintUp up, PieceBook book)
    {
        if (up.Quarters is not { } quarters)
        {
            return null;
        }

        var piece = book.Of(take.Piece);
        var lies = quarters % 2 == 1;
        if (piece.Grain == CutGrain.Lengthwise && lies)
        {
            return null;
        }

        var stands = piece.Grain == CutGrain.Lengthwise ? piece : book.Upright(piece, lies);
        Surd width = piece.Width,
            height = piece.Height;
        var turn = quarters switch
        {
            0 => Motion.Identity,
            1 => Motion.QuarterTurns(1).Then(Motion.Shift(width, 0)),
            2 => Motion.QuarterTurns(2).Then(Motion.Shift(width, height)),
            _ => Motion.QuarterTurns(3).Then(Motion.Shift(0, height)),
        };
        return take with { Piece = stands.Id, Motion = turn.Then(take.Motion) };
    }

    /// <summary>How each taken piece is turned in each copy that the program makes; null where that cannot be told.</summary>
    private static ImmutableArray<Gone>? Ways(Program program)
    {
        var table = new Dictionary<string, Lying>(StringComparer.Ordinal);
        for (var i = 0; i < program.Verbs.Length; i++)
        {
            switch (program.Verbs[i])
            {
                case Take take:
                    table[take.Into] = Lying.Flat([new(i, take.Motion)]);
                    break;
                case Turn turn:
                    var turned = table[turn.On];
                    table[turn.On] = new(Moved(turned.Bottom, turn.Motion), Moved(turned.Top, turn.Motion), turned.Seam is { } seam ? turn.Motion.Apply(seam) : null);
                    break;
                case Lay lay:
                    table[lay.Into] = new(table[lay.Bottom].All, Moved(table[lay.Top].All, lay.Motion), null);
                    break;
                case Sew sew:
                    var layers = table[sew.On];
                    if (layers.Seam is { } other && !Point.Cross(other.Step, sew.Line.Step).IsZero)
                    {
                        // Which of two seams holds a part after it is cut is not followed.
                        return null;
                    }

                    table[sew.On] = layers with { Seam = sew.Line };
                    break;
                case CutAlong cut:
                    var whole = table[cut.On];
                    foreach (var side in new[] { cut.Left, cut.Right }.OfType<string>())
                    {
                        table[side] = whole;
                    }

                    break;
                case Press press when table[press.On] is { Seam: { } fold } pair:
                    table[press.On] = Lying.Flat([.. pair.Bottom, .. Moved(pair.Top, Motion.Reflect(fold))]);
                    break;
                case Trim:
                    break;
                default:
                    return null;
            }
        }

        return [.. program.Makes.SelectMany(register => table[register].All).Distinct()];
    }

    private static ImmutableArray<Gone> Moved(ImmutableArray<Gone> pieces, Motion motion) =>
        [.. pieces.Select(gone => gone with { Way = gone.Way.Then(motion) with { DX = 0, DY = 0 } })];
}
