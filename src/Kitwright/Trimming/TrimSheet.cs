using System.Collections.Immutable;
using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.WorkTimes;

namespace Kitwright.Trimming;

/// <summary>
/// What squaring up along the way would take: each unit that can be, to which size, how generous to cut for it, how many
/// trims and how long, and the mat that the largest of them needs.
/// </summary>
/// <remarks>
/// Trimming sets the outside right and moves the error into the part joined last; so it measures from the last seam, and
/// that part is cut generous or there is nothing to trim (common practice, no source).
/// </remarks>
public sealed record TrimSheet(ImmutableArray<TrimLine> Lines)
{
    /// <summary>Turning mats as they are sold, by side; a unit must lie on one whole while it is turned (common practice, no source).</summary>
    private static readonly ImmutableArray<Length> Mats = [Length.Inches(12), Length.Inches(17)];

    private static readonly Length Room = Length.Inches(0, 1, 2);
    private static readonly Length RulerLine = Length.Inches(0, 1, 16);

    public long Trims => Lines.Sum(line => (long)line.Copies * line.Sides);

    public double Seconds => Lines.Sum(line => line.Seconds);

    public Length LargestSide => Lines.IsEmpty ? Length.Zero : Lines.Max(line => Length.Max(line.Width, line.Height));

    /// <summary>The smallest turning mat that holds the largest unit; null where none does and the unit is turned by hand.</summary>
    public Length? Mat => Mats.Where(mat => LargestSide + Room <= mat).Select(mat => (Length?)mat).FirstOrDefault();

    /// <param name="certainty">The share of trims that are to find cloth on every side; between 0 and 1.</param>
    public static TrimSheet Of(QuiltPlan plan, Hands hands, double certainty, StandardTimes times, Allowances allowances)
    {
        var shape = QuiltShape.Of(plan);
        var errors = ClosedForm.Of(shape, hands);
        return new(
            [
                .. shape
                    .Units.Select((unit, i) => (unit, recipe: plan.Sewing.Recipes[i], error: errors[i]))
                    .Where(x => CanBeSquared(x.unit, x.recipe))
                    .Select(x => Line(x.unit, x.recipe, x.error, plan.Seam, hands, certainty, times, allowances)),
            ]
        );
    }

    private static bool CanBeSquared(UnitShape unit, Recipe recipe) =>
        recipe.Outline is null
        && !unit.Trimmed
        && (unit.Plain || (unit.Parts.IsEmpty && recipe.Shows is null && recipe.Verbs.OfType<Press>().Any() && recipe.Kind is not ("joined-strip" or "lengthwise-strip")));

    private static TrimLine Line(
        UnitShape unit,
        Recipe recipe,
        (LinearError Across, LinearError Up) error,
        Length seam,
        Hands hands,
        double certainty,
        StandardTimes times,
        Allowances allowances
    )
    {
        var sides = unit.Plain ? PlainEnds(unit) : 4;
        // A side from the last seam is a cut less half a seam; a unit of a technique is off as a whole, each way.
        var side = new LinearError(1, 0.5, hands.CutVariance + (hands.TakeVariance / 4));
        LinearError[] off = unit.Plain ? [.. Enumerable.Repeat(side, sides)] : [error.Across, error.Up];
        // Each measure may fail its share, so that all hold with the certainty (Bonferroni's inequality).
        var deviations = Normal.Beyond((1 - certainty) / off.Length);
        var needed = off.Max(e => (deviations * e.Deviation) - e.Mean(hands));
        return new(
            recipe.Id,
            recipe.Copies,
            recipe.Width,
            recipe.Height,
            sides,
            unit.Plain ? LastPart(recipe) + seam : null,
            // An estimate goes up to the next line of the ruler.
            Length.Max(RulerLine, Estimate.Nearest(Math.Max(0, needed)).RoundUpTo(RulerLine)),
            allowances.Standard(times.Of(Operation.Trim, recipe.Copies * sides / 4.0))
        );
    }

    private static int PlainEnds(UnitShape unit) => unit.Parts is [{ Unit: < 0 }, { Unit: >= 0 }, ..] ? 2 : 1;

    /// <summary>How wide the part joined last shows: its shorter side.</summary>
    private static Length LastPart(Recipe recipe)
    {
        var (low, high) = recipe.Picture.Parts[^1].Outline.Bounds();
        Geometry.Surd width = high.X - low.X,
            height = high.Y - low.Y;
        return (width < height ? width : height).RoundUpTo(RulerLine);
    }
}

/// <summary>One unit that can be squared up.</summary>
/// <param name="Width">To square up to, seam allowances included.</param>
/// <param name="Sides">Sides that are trimmed on each copy.</param>
/// <param name="FromSeam">The ruler line that lies on the last seam; null where the unit is squared up about its seams.</param>
/// <param name="Generous">How much larger its pieces, or the part joined last, are cut so that the trim finds cloth.</param>
public sealed record TrimLine(
    PathId Recipe,
    int Copies,
    Length Width,
    Length Height,
    int Sides,
    Length? FromSeam,
    Length Generous,
    double Seconds
);
