using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>A seam as pressed: where, and to which side its allowances go.</summary>
/// <param name="Toward">A step of one inch to that side; meaningless where the seam is pressed open.</param>
internal readonly record struct PressMark(Place At, Place Toward, bool Open)
{
    public PressMark Moved(Affine by) => new(by.Apply(At), by.Apply(At + Toward) - by.Apply(At), Open);
}

/// <summary>Where the seams of a step end up in the finished copy and to which side each is pressed, for arrows.</summary>
internal static class PressMarks
{
    /// <summary>In the unit's coordinates, inches, y up, in the order of pressing.</summary>
    public static ImmutableArray<PressMark> Of(SeamTrace trace, Recipe recipe) =>
        [
            .. trace
                .Of(recipe.Id)
                .Seams.OrderBy(seam => seam.Seam.Verb)
                .Select(seam =>
                {
                    var toward = ((Press)recipe.Verbs[seam.Seam.Verb]).Toward;
                    var step = new Place(seam.TowardTop.X, seam.TowardTop.Y) * (toward == PressToward.Bottom ? -1 : 1);
                    return new PressMark(new(seam.Middle.X, seam.Middle.Y), step, toward == PressToward.Open);
                }),
        ];

    /// <summary>The halves of seams that are swirled; each goes the way of the seam that ends at its corner.</summary>
    public static ImmutableArray<PressMark> OfSwirled(SeamTrace trace, Recipe recipe, QuiltPlan plan) =>
        [
            .. trace
                .Of(recipe.Id)
                .Swirled.Select(half =>
                {
                    var toward = plan.Sewing.Recipes.First(r => r.Id == half.Seam.Recipe).Verbs[half.Seam.Verb] is Press { Toward: PressToward.Bottom } ? -1 : 1;
                    return new PressMark(new(half.Middle.X, half.Middle.Y), new Place(half.TowardTop.X, half.TowardTop.Y) * toward, false);
                }),
        ];

    /// <summary>The seams of parts that are set in, in the order of sewing; their step points to the part that was set in or away.</summary>
    public static ImmutableArray<PressMark> OfSetIn(SeamTrace trace, Recipe recipe) =>
        [
            .. trace
                .Of(recipe.Id)
                .SetIn.Select(seam =>
                {
                    var toward = recipe.Verbs[seam.Verb] is CloseSeam closed ? closed.Toward : ((SewIn)recipe.Verbs[seam.Verb]).Toward;
                    // Round a corner, the next side of the angle lies the other way.
                    var turned = toward == PressToward.Swirled && seam.Side % 2 == 1;
                    var step = new Place(seam.TowardPart.X, seam.TowardPart.Y) * (toward == PressToward.Bottom || turned ? -1 : 1);
                    var middle = (seam.From + seam.To) * 0.5;
                    // The slant of a mitered corner is pressed open, as its words say (common practice, no source).
                    var slants = recipe.Kind == "mitered" && Math.Abs(seam.TowardPart.X * seam.TowardPart.Y) > Spot.Near;
                    return new PressMark(new(middle.X, middle.Y), step, slants || toward == PressToward.Open);
                }),
        ];

    internal static Place PlaceOf(Geometry.Point point) => new(point.X.ToDouble(), point.Y.ToDouble());
}
