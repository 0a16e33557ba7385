using Kitwright.Checking.Exact;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// What the cut list says of hands, against the outlines that pieces are cut to: a piece cut to a shape of a hand says
/// which, and names the piece that becomes its mirror image; but not where the cloth has no wrong side.
/// </summary>
internal static class HandRules
{
    /// <summary>How far a shape is known by its sides: their squared lengths and products with the next, all round.</summary>
    private readonly record struct Side(Surd Square, Surd Product);

    public static void Check(QuiltPlan plan, IReadOnlyDictionary<PathId, Unit?> units, FindingList findings, Effort effort)
    {
        var shapes = plan.Pieces.ToDictionary(p => p.Id, _ => Array.Empty<Side>());
        var twoSided = plan.Fabrics.Where(f => f.TwoSided).SelectMany(f => f.Roles).ToHashSet(StringComparer.Ordinal);
        foreach (var recipe in plan.Sewing.Recipes)
        {
            Side[] sides = [];
            if (recipe.Outline is { } outline && IsOnlyCut(recipe) && units[recipe.Id]!.Faces is [var cloth])
            {
                sides = Sides([.. outline.Corners], effort);
                // A triangle cut from a square has no hand, though what it is trimmed to may have a little of one; nor
                // has a shape that only rounding makes lopsided as cut.
                sides = HandOf(Sides([.. Enumerable.Range(0, cloth.Shape.Count).Select(i => cloth.Shape[i])], effort), effort) == Hand.Either ? [] : sides;
            }

            var hand = HandOf(sides, effort);
            foreach (var take in recipe.Verbs.OfType<Take>())
            {
                // Cloth without a wrong side may be turned over: what is cut from it has no hand.
                if (plan.Pieces.First(p => p.Id == take.Piece) is { Hand: Hand.Either } either && twoSided.Contains(either.Role))
                {
                    continue;
                }

                if (plan.Pieces.First(p => p.Id == take.Piece) is var piece && piece.Hand != hand)
                {
                    findings.Add("check.pieces.hand", piece.Id.Value, Word(piece.Hand), Word(hand));
                }

                shapes[take.Piece] = hand == Hand.Either ? [] : sides;
            }
        }

        foreach (var piece in plan.Pieces)
        {
            var mirror = plan.Pieces.FirstOrDefault(other =>
                shapes[piece.Id].Length > 0
                && (other.Role, other.Width, other.Height) == (piece.Role, piece.Width, piece.Height)
                && AreMirrored(shapes[piece.Id], shapes[other.Id], effort)
            );
            if (piece.Mirror != mirror?.Id || (piece.Hand != Hand.Either && shapes[piece.Id].Length == 0))
            {
                findings.Add("check.pieces.mirror", piece.Id.Value, Named(piece.Mirror), Named(mirror?.Id));
            }
        }
    }

    /// <summary>One piece, cut and turned, joined to nothing: what comes out is its own shape.</summary>
    private static bool IsOnlyCut(Recipe recipe) => recipe.Verbs.OfType<Take>().Count() == 1 && !recipe.Verbs.Any(v => v is Use or Lay or Sew or SewIn);

    private static Side[] Sides(Point[] corners, Effort effort)
    {
        effort.Spend((long)corners.Length * corners.Length);
        var sides = new Side[corners.Length];
        for (var i = 0; i < corners.Length; i++)
        {
            Point p = corners[i],
                q = corners[(i + 1) % corners.Length],
                r = corners[(i + 2) % corners.Length];
            Surd x = q.X - p.X,
                y = q.Y - p.Y;
            sides[i] = new((x * x) + (y * y), (x * (r.X - q.X)) + (y * (r.Y - q.Y)));
        }

        return sides;
    }

    /// <summary>The sides of the mirror image: the same round the other way, each with the product that it had with the one before.</summary>
    private static Side[] Mirrored(Side[] sides)
    {
        var n = sides.Length;
        var mirrored = new Side[n];
        for (var i = 0; i < n; i++)
        {
            mirrored[i] = new(sides[n - 1 - i].Square, sides[((2 * n) - 2 - i) % n].Product);
        }

        return mirrored;
    }

    private static Hand HandOf(Side[] sides, Effort effort) =>
        sides.Length == 0 ? Hand.Either
        : Least(sides, effort) is var own && Least(Mirrored(sides), effort) is var mirror && Order(own, 0, mirror, 0) is var order && order == 0 ? Hand.Either
        : order < 0 ? Hand.Left
        : Hand.Right;

    private static bool AreMirrored(Side[] one, Side[] other, Effort effort) =>
        one.Length == other.Length && Order(Least(one, effort), 0, Least(Mirrored(other), effort), 0) == 0;

    /// <summary>Begun where it comes first in order.</summary>
    private static Side[] Least(Side[] sides, Effort effort)
    {
        effort.Spend((long)sides.Length * sides.Length);
        var least = 0;
        for (var from = 1; from < sides.Length; from++)
        {
            if (Order(sides, from, sides, least) < 0)
            {
                least = from;
            }
        }

        return [.. sides[least..], .. sides[..least]];
    }

    private static int Order(Side[] one, int from, Side[] other, int start)
    {
        for (var i = 0; i < one.Length; i++)
        {
            Side p = one[(from + i) % one.Length],
                q = other[(start + i) % other.Length];
            var order = p.Square.CompareTo(q.Square) is not 0 and var by ? by : p.Product.CompareTo(q.Product);
            if (order != 0)
            {
                return order;
            }
        }

        return 0;
    }

    private static Message Named(PathId? piece) => Say.Names(piece is { } id ? [id.Value] : []);

    private static Message Word(Hand hand) =>
        hand switch
        {
            Hand.Left => Message.Of("check.hand.left"),
            Hand.Right => Message.Of("check.hand.right"),
            _ => Message.Of("check.hand.either"),
        };
}
