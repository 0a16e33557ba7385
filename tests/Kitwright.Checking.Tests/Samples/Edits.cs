using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>Small changes to a plan, each made in one place only.</summary>
internal static class Edits
{
    public static readonly Length Step = Length.Inches(0, 1, 8);

    public static QuiltPlan EditRecipe(this QuiltPlan plan, string id, Func<Recipe, Recipe> edit) =>
        plan with
        {
            Sewing = new(plan.Sewing.Recipes.Edit(r => r.Id.Value == id, edit)),
        };

    /// <param name="number">Counted from 1, as places do.</param>
    public static QuiltPlan EditVerb<T>(this QuiltPlan plan, string recipe, int number, Func<T, Verb> edit)
        where T : Verb =>
        plan.EditRecipe(recipe, r => r with { Verbs = r.Verbs.SetItem(number - 1, edit((T)r.Verbs[number - 1])) });

    public static QuiltPlan DropVerb(this QuiltPlan plan, string recipe, int number) =>
        plan.EditRecipe(recipe, r => r with { Verbs = r.Verbs.RemoveAt(number - 1) });

    public static QuiltPlan AddVerb(this QuiltPlan plan, string recipe, int number, Verb verb) =>
        plan.EditRecipe(recipe, r => r with { Verbs = r.Verbs.Insert(number - 1, verb) });

    public static QuiltPlan EditPicture(this QuiltPlan plan, string recipe, Func<UnitPicture, UnitPicture> edit) =>
        plan.EditRecipe(recipe, r => r with { Picture = edit(r.Picture) });

    /// <summary>A piece in another size, cut list and cloth alike, so that only the sewing can tell.</summary>
    public static QuiltPlan Resize(this QuiltPlan plan, string label, Length wider, Length higher) =>
        plan.EditPiece(label, p => p with { Width = p.Width + wider, Height = p.Height + higher }) with
        {
            Cloths =
            [
                .. plan.Cloths.Select(c =>
                    c with
                    {
                        Demand =
                        [
                            .. c.Demand.Select(d =>
                                d.Label == label ? d with { Width = d.Width + wider, Height = d.Height + higher } : d
                            ),
                        ],
                    }
                ),
            ],
        };

    public static QuiltPlan EditPiece(this QuiltPlan plan, string label, Func<CutPiece, CutPiece> edit) =>
        plan with
        {
            Pieces = plan.Pieces.Edit(p => p.Label == label, edit),
        };

    public static QuiltPlan EditCloth(this QuiltPlan plan, string letter, Func<ClothPlan, ClothPlan> edit) =>
        plan with
        {
            Cloths = plan.Cloths.Edit(c => c.Letter == letter, edit),
        };

    public static QuiltPlan EditStrip(this QuiltPlan plan, string id, Func<StripCut, StripCut> edit) =>
        plan with
        {
            Cloths = plan.Cloths.Edit(
                c => c.Strips.Any(s => s.Id.Value == id),
                c => c with { Strips = c.Strips.Edit(s => s.Id.Value == id, edit) }
            ),
        };

    /// <summary>The first sub-cut of a strip.</summary>
    public static QuiltPlan EditSubCut(this QuiltPlan plan, string strip, Func<SubCut, SubCut> edit) =>
        plan.EditStrip(strip, s => s with { SubCuts = s.SubCuts.SetItem(0, edit(s.SubCuts[0])) });

    public static QuiltPlan EditDesign(this QuiltPlan plan, Func<Design, Design> edit) =>
        plan with
        {
            Design = edit(plan.Design),
        };

    public static QuiltPlan EditPatch(this QuiltPlan plan, string id, Func<Patch, Patch> edit) =>
        plan.EditDesign(d =>
            d.Patches.Any(p => p.Id.Value == id)
                ? d with { Patches = d.Patches.Edit(p => p.Id.Value == id, edit) }
                : d with
                {
                    Blocks = d.Blocks.Edit(
                        b => b.Patches.Any(p => p.Id.Value == id),
                        b => b with { Patches = b.Patches.Edit(p => p.Id.Value == id, edit) }
                    ),
                }
        );

    /// <summary>An edit that would change nothing is a slip in the test.</summary>
    public static ImmutableArray<T> Edit<T>(this ImmutableArray<T> items, Func<T, bool> which, Func<T, T> edit) =>
        items.Any(which)
            ? [.. items.Select(i => which(i) ? edit(i) : i)]
            : throw new InvalidOperationException($"No such {typeof(T).Name}.");

    public static Line Shifted(this Line line, Surd dx, Surd dy) =>
        new(line.From + new Point(dx, dy), line.To + new Point(dx, dy));
}
