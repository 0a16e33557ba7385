using System.Collections.Immutable;
using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
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
    private static readonly ImmutableArray<Length> InchMats = [Length.Inches(12), Length.Inches(17)];
    private static readonly ImmutableArray<Length> MetricMats = [Length.Millimeters(300), Length.Millimeters(430)];

    private static readonly Length Room = Length.Inches(0, 1, 2);

    /// <summary>Whether mats are sold and rulers lined by the centimeter here.</summary>
    public bool Metric { get; init; }

    /// <summary>Lines of a ruler lie so close: 1/16 in, or 1 mm where the plan's ruler steps in millimeters.</summary>
    private static Length RulerLine(Length rulerStep) => rulerStep.InMillimeters.IsInteger ? Length.Millimeters(1) : Length.Inches(0, 1, 16);

    public long Trims => Lines.Sum(line => (long)line.Copies * line.Sides);

    /// <summary>Of these, sides that the plan trims, with cloth for it in the cut list.</summary>
    public long Planned => Lines.Where(line => line.Planned is not null).Sum(line => (long)line.Copies * line.Sides);

    /// <summary>What the widest need is among the rounds of plain strips; null where there are none.</summary>
    public Length? RoundsNeed => Lines.Where(line => line.FromSeam is not null).Select(line => (Length?)line.Generous).Max();

    public double Seconds => Lines.Sum(line => line.Seconds);

    public Length LargestSide => Lines.IsEmpty ? Length.Zero : Lines.Max(line => Length.Max(line.Width, line.Height));

    /// <summary>The smallest turning mat that holds the largest unit; null where none does and the unit is turned by hand.</summary>
    public Length? Mat => (Metric ? MetricMats : InchMats).Where(mat => LargestSide + Room <= mat).Select(mat => (Length?)mat).FirstOrDefault();

    /// <param name="certainty">The share of trims that are to find cloth on every side; between 0 and 1.</param>
    public static TrimSheet Of(QuiltPlan plan, Hands hands, double certainty, StandardTimes times, Allowances allowances)
    {
        var shape = QuiltShape.Of(plan);
        var pieces = plan.Pieces.ToDictionary(piece => piece.Id);
        var errors = ClosedForm.Of(shape, hands);
        return new(
            [
                .. shape
                    .Units.Select((unit, i) => (unit, recipe: plan.Sewing.Recipes[i], error: errors[i]))
                    .Where(x => CanBeSquared(x.unit, x.recipe))
                    .Select(x => Line(x.unit, x.recipe, x.error, plan.RulerStep, plan.Seam, hands, certainty, times, allowances) with
                    {
                        Planned = x.unit.Trimmed ? InPlan(x.recipe, pieces, plan.Seam) : null,
                    }),
            ]
        )
        {
            Metric = plan.RulerStep.InMillimeters.IsInteger,
        };
    }

    private static bool CanBeSquared(UnitShape unit, Recipe recipe) =>
        recipe.Outline is null
        && (unit.Trimmed
            ? Rounds.Last(recipe) is not null || recipe.Makes.Length > 1 || recipe.Kind is "goose-flip" or "snowball"
            : (unit.Plain && Rounds.Last(recipe) is not null) || (unit.Parts.IsEmpty && recipe.Shows is null && recipe.Verbs.OfType<Press>().Any() && recipe.Kind is not ("joined-strip" or "lengthwise-strip")));

    /// <summary>How much wider than it need be the plan cuts the strip joined last; zero for units of which its technique says so.</summary>
    private static Length InPlan(Recipe recipe, Dictionary<PathId, CutPiece> pieces, Length seam) =>
        Rounds.Last(recipe) is { } shown && recipe.Verbs.OfType<Take>().Last() is var strip && pieces[strip.Piece] is var piece
            ? Length.Max(Length.Zero, Length.Min(piece.Width, piece.Height) - (shown + (seam * 2)))
            : Length.Zero;

    private static TrimLine Line(
        UnitShape unit,
        Recipe recipe,
        (LinearError Across, LinearError Up) error,
        Length rulerStep,
        Length seam,
        Hands hands,
        double certainty,
        StandardTimes times,
        Allowances allowances
    )
    {
        var strip = unit.Plain ? Rounds.Last(recipe) : null;
        var sides = strip is null ? 4 : PlainEnds(unit);
        // A side from the last seam is a cut less half a seam; a unit of a technique is off as a whole, each way.
        var side = new LinearError(1, 0.5, hands.CutVariance + (hands.TakeVariance / 4));
        LinearError[] off = strip is not null ? [.. Enumerable.Repeat(side, sides)] : [error.Across, error.Up];
        // Each measure may fail its share, so that all hold with the certainty (Bonferroni's inequality).
        var deviations = Normal.Beyond((1 - certainty) / off.Length);
        var needed = off.Max(e => (deviations * e.Deviation) - e.Mean(hands));
        return new(
            recipe.Id,
            recipe.Copies,
            recipe.Width,
            recipe.Height,
            sides,
            strip + seam,
            // An estimate goes up to the next line of the ruler.
            Length.Max(RulerLine(rulerStep), Estimate.Nearest(Math.Max(0, needed)).RoundUpTo(RulerLine(rulerStep))),
            allowances.Standard(times.Of(Operation.Trim, recipe.Copies * sides / 4.0))
        );
    }

    private static int PlainEnds(UnitShape unit) => unit.Parts is [{ Unit: < 0 }, { Unit: >= 0 }, ..] ? 2 : 1;
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
)
{
    /// <summary>Set where the plan trims the unit: how much wider it cuts the strip joined last; zero where a technique says so.</summary>
    public Length? Planned { get; init; }
}
