using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>A step with a partial seam, in words: sewn half way first, closed last.</summary>
internal static class PartialWords
{
    /// <param name="parts">The center, the part that is sewn on half way, and the others in order.</param>
    /// <param name="step">Of the ruler, to which a length is rounded.</param>
    public static IEnumerable<Message> Of(Recipe recipe, ImmutableArray<Message> parts, Length step)
    {
        var sewn = recipe.Verbs.OfType<SewPart>().First();
        yield return Message.Of(
            "step.partial.first",
            ("first", parts[1]),
            ("center", parts[0]),
            ("end", EndOf(sewn)),
            ("length", Nearest(sewn.Stop - sewn.Line.From, step))
        );
        yield return Message.Of("step.partial.round", ("first", parts[1]), ("parts", parts.RemoveRange(0, 2)), ("count", parts.Length - 2));
        yield return Message.Of("step.partial.close", ("first", parts[1]));
    }

    /// <summary>At which end of the center the first seam begins, as drawn.</summary>
    private static string EndOf(SewPart sewn)
    {
        var step = sewn.Line.Step;
        return step.X.IsZero ? (step.Y.Sign > 0 ? "bottom" : "top")
            : step.Y.IsZero ? (step.X.Sign > 0 ? "left" : "right")
            : "other";
    }

    private static Length Nearest(Point way, Length step) =>
        step * (long)Math.Round(Math.Sqrt(Point.Dot(way, way).ToDouble()) / step.InInches.ToDouble());
}
