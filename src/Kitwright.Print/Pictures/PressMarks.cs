using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>
/// Follows a recipe's verbs to find where its seams end up in the finished copy and to which side each is pressed. For
/// arrows only; that the recipe makes the unit is the checker's to say.
/// </summary>
internal static class PressMarks
{
    /// <summary>In the unit's coordinates, inches, y up, in the order of pressing.</summary>
    public static ImmutableArray<PressMark> Of(QuiltPlan plan, Recipe recipe)
    {
        var table = new Dictionary<string, Cloth>(StringComparer.Ordinal);
        foreach (var verb in recipe.Verbs)
        {
            Do(plan, verb, table);
        }

        return table.TryGetValue(recipe.Makes[0], out var made) ? made.Marks : [];
    }

    private static void Do(QuiltPlan plan, Verb verb, Dictionary<string, Cloth> table)
    {
        switch (verb)
        {
            case Take take:
                table[take.Into] = PieceOf(plan, take.Piece).Moved(Cloth.Of(take.Motion));
                break;
            case Use use:
                table[use.Into] = UnitOf(plan, use.Unit).Moved(Cloth.Of(use.Motion));
                break;
            case Turn turn:
                table[turn.On] = table[turn.On].Moved(Cloth.Of(turn.Motion));
                break;
            case Lay lay:
                table.Remove(lay.Bottom, out var bottom);
                table.Remove(lay.Top, out var top);
                table[lay.Into] = bottom!.Under(top!.Moved(Cloth.Of(lay.Motion)));
                break;
            case Sew sew:
                table[sew.On] = table[sew.On].Sewn(PlaceOf(sew.Line.From), PlaceOf(sew.Line.To));
                break;
            case CutAlong cut:
                Cut(cut, table);
                break;
            case Press press:
                table[press.On] = table[press.On].Opened(press.Toward);
                break;
        }
    }

    private static void Cut(CutAlong cut, Dictionary<string, Cloth> table)
    {
        table.Remove(cut.On, out var whole);
        Place from = PlaceOf(cut.Line.From),
            to = PlaceOf(cut.Line.To);
        if (cut.Left is not null)
        {
            table[cut.Left] = whole!.LeftOf(from, to);
        }

        if (cut.Right is not null)
        {
            table[cut.Right] = whole!.LeftOf(to, from);
        }
    }

    private static Cloth PieceOf(QuiltPlan plan, PathId id)
    {
        var piece = plan.Pieces.First(p => p.Id == id);
        return Cloth.Rectangle(0, 0, piece.Width.InInches.ToDouble(), piece.Height.InInches.ToDouble());
    }

    // A unit's origin is its finished corner: the allowances lie beyond.
    private static Cloth UnitOf(QuiltPlan plan, PathId id)
    {
        var recipe = plan.Sewing.Recipes.First(r => r.Id == id);
        var seam = plan.Seam.InInches.ToDouble();
        return Cloth.Rectangle(-seam, -seam, recipe.Width.InInches.ToDouble() - seam, recipe.Height.InInches.ToDouble() - seam);
    }

    internal static Place PlaceOf(Geometry.Point point) => new(point.X.ToDouble(), point.Y.ToDouble());
}
