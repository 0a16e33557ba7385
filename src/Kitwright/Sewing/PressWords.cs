using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>How a step is pressed, in words; the arrows of its drawing say the same.</summary>
internal static class PressWords
{
    /// <summary>More places than this are seen on the drawing, and no list of them helps.</summary>
    private const int MostNamed = 4;

    /// <summary>Which way each of more seams lies is easier seen than read.</summary>
    private const int MostSaid = 5;

    /// <summary>A step that joins parts in a row.</summary>
    /// <param name="parts">What each part is called, in the order of sewing.</param>
    public static IEnumerable<Message> OfJoin(Recipe recipe, ImmutableArray<Message> parts)
    {
        var toward = recipe.Verbs.OfType<Press>().Select(press => press.Toward).ToArray();
        if (toward.Length == 0 || toward.Length != parts.Length - 1)
        {
            yield break;
        }

        if (toward.All(way => way == PressToward.Swirled))
        {
            yield return Message.Of("press.spun");
            yield break;
        }

        int[] open = [.. Enumerable.Range(0, toward.Length).Where(i => toward[i] == PressToward.Open)];
        if (open.Length == toward.Length)
        {
            yield return Message.Of("press.open.all", ("seams", open.Length));
            yield break;
        }

        int[] closed = [.. Enumerable.Range(0, toward.Length).Except(open)];
        // A seam lies between its part and the next, which lay on top.
        Message[] targets = [.. closed.Select(i => parts[toward[i] == PressToward.Top ? i + 1 : i]).Distinct()];
        Message[] others = [.. closed.Select(i => parts[toward[i] == PressToward.Top ? i : i + 1])];
        var all = open.Length == 0 ? "all" : "rest";
        if (!targets.Intersect(others).Any())
        {
            yield return Message.Of("press.toward", ("parts", targets.ToImmutableArray()), ("which", all));
        }
        else if (closed.All(i => toward[i] == PressToward.Top))
        {
            yield return Message.Of("press.last", ("seams", closed.Length), ("which", all));
        }
        else if (closed.All(i => toward[i] == PressToward.Bottom))
        {
            yield return Message.Of("press.first", ("seams", closed.Length), ("which", all));
        }
        else if (toward.Length <= MostSaid)
        {
            yield return Message.Of("press.each", ("ways", (ImmutableArray<Message>)[.. Each(closed, toward)]), ("which", all));
        }
        else
        {
            yield return Message.Of("press.arrows", ("which", all));
        }

        if (open.Length > 0)
        {
            yield return Message.Of(
                "press.open.some",
                ("seams", open.Length),
                ("which", (ImmutableArray<Message>)[.. open.Select(i => Message.Of("press.between", ("one", parts[i]), ("other", parts[i + 1])))])
            );
        }
    }

    /// <summary>"The 1st and 4th seams toward the part before them", then those the other way.</summary>
    private static IEnumerable<Message> Each(int[] closed, PressToward[] toward)
    {
        foreach (var (way, key) in new[] { (PressToward.Bottom, "press.each.back"), (PressToward.Top, "press.each.on") })
        {
            Message[] seams = [.. closed.Where(i => toward[i] == way).Select(i => Message.Of("press.number", ("number", i + 1)))];
            yield return Message.Of(key, ("seams", seams.ToImmutableArray()), ("count", seams.Length));
        }
    }

    /// <summary>Where seams of a step meet, and how.</summary>
    /// <param name="step">Of the ruler, to which places are rounded.</param>
    /// <param name="named">Whether places are told by numbers too: not where the drawing lies otherwise than the unit.</param>
    public static IEnumerable<Message> OfCrossings(StepCrossings? crossings, Length step, bool named)
    {
        if (crossings is not { Each: > 0 })
        {
            yield break;
        }

        var others = crossings.Each - crossings.NestedEach;
        if (crossings.NestedEach > 0)
        {
            yield return Message.Of("press.nest", ("places", crossings.NestedEach));
        }

        if (others > 0)
        {
            yield return Message.Of(
                "press.cannot",
                ("places", others),
                ("nested", crossings.NestedEach),
                ("named", named && others <= MostNamed ? "yes" : "no"),
                ("where", (ImmutableArray<Message>)[.. crossings.Others.Take(MostNamed).Select(place => At(place, step))])
            );
        }
    }

    /// <summary>How the seams lie by which parts are set in.</summary>
    public static Message OfSetIn(Recipe recipe) =>
        Message.Of(
            "press.set-in",
            ("way", recipe.Verbs.OfType<SewIn>().First().Toward switch
            {
                PressToward.Swirled => "swirled",
                PressToward.Open => "open",
                _ => "part",
            })
        );

    /// <summary>Where the allowances of flipped corners lie: with the corner, back under the body, open, or some each way.</summary>
    public static string OfFlips(Recipe recipe) =>
        recipe.Verbs.OfType<Press>().Select(press => press.Toward).Distinct().ToArray() switch
        {
            [PressToward.Top] => "corner",
            [PressToward.Bottom] => "body",
            [PressToward.Open] => "open",
            _ => "arrows",
        };

    private static Message At(Spot place, Length step) => Message.Of("press.at", ("across", Nearest(place.X, step)), ("up", Nearest(place.Y, step)));

    private static Length Nearest(double inches, Length step) => step * (long)Math.Round(inches / step.InInches.ToDouble());

    /// <summary>Blocks that lie half round in a row although the design has them upright: they look the same.</summary>
    public static IEnumerable<Message> OfTurns(Recipe recipe)
    {
        var asDrawn = recipe.Picture.Tiles.Select(tile => tile.Motion).ToHashSet();
        var blocks = recipe.Picture.Tiles.Select(tile => $"block/{tile.Block}").ToHashSet(StringComparer.Ordinal);
        int[] turned =
        [
            .. recipe
                .Verbs.OfType<Use>()
                .Select((use, i) => (use, Number: i + 1))
                .Where(x => blocks.Any(b => x.use.Unit.Value == b || x.use.Unit.Value.StartsWith(b + "/", StringComparison.Ordinal)))
                .Where(x => !asDrawn.Contains(x.use.Motion))
                .Select(x => x.Number),
        ];
        if (turned.Length > 0)
        {
            yield return Message.Of("press.turned", ("parts", (ImmutableArray<Message>)[.. turned.Select(n => Message.Of("press.number", ("number", n)))]), ("count", turned.Length));
        }
    }

    /// <summary>The fabric toward which the seam of a two-piece unit lies; null where it lies open.</summary>
    public static string? Letter(Recipe recipe, string bottom, string top) =>
        recipe.Verbs.OfType<Press>().First().Toward switch
        {
            PressToward.Top => top,
            PressToward.Bottom => bottom,
            _ => null,
        };
}
