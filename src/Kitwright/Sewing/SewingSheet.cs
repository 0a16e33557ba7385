using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Sewing;

/// <summary>What a quilt's sewing comes to, step by step: counts and sizes, from the sewing plan alone.</summary>
/// <remarks>
/// A row of n parts is n − 1 seams. Equal seams of one step are sewn in one chain, thread uncut from unit to unit, so
/// each counts as one start however many units there are. A part that is set in takes a seam for each of its edges,
/// and a partial seam is sewn twice: the beginning first, the rest last.
/// </remarks>
public sealed record SewingSheet(ImmutableArray<StepCount> Steps)
{
    /// <summary>Seams sewn in all.</summary>
    public long Seams => Steps.Sum(step => step.AllSeams);

    /// <summary>Times that a chain is begun.</summary>
    public int Chains => Steps.Sum(step => step.SeamsEach);

    /// <summary>Units squared up or trimmed to size in an act of its own.</summary>
    public long Trims => Steps.Sum(step => step.AllTrims);

    public static SewingSheet Of(QuiltPlan plan)
    {
        var pieces = plan.Pieces.ToDictionary(piece => piece.Id);
        var recipes = plan.Sewing.Recipes;
        var made = recipes.ToDictionary(recipe => recipe.Id);
        return new([.. recipes.Select((recipe, index) => Count(recipe, index + 1, pieces, made))]);
    }

    private static StepCount Count(
        Recipe recipe,
        int number,
        Dictionary<PathId, CutPiece> pieces,
        Dictionary<PathId, Recipe> made
    )
    {
        var taken = recipe
            .Verbs.Select(verb => verb switch
            {
                Take take => (PathId?)take.Piece,
                Use use => use.Unit,
                _ => null,
            })
            .OfType<PathId>()
            .GroupBy(id => id)
            .Select(same =>
                pieces.TryGetValue(same.Key, out var piece)
                    ? new StepInput(same.Key, same.Count(), piece.Width, piece.Height)
                    : new StepInput(same.Key, same.Count(), made[same.Key].Width, made[same.Key].Height)
            );
        return new(
            recipe.Id,
            number,
            recipe.Runs,
            recipe.Copies,
            [.. taken],
            recipe.Width,
            recipe.Height,
            recipe.Verbs.Sum(verb => verb is Sew or SewPart or CloseSeam ? 1 : verb is SewIn set ? set.Lines.Length : 0),
            recipe.Verbs.Sum(verb => verb is Press or CloseSeam ? 1 : verb is SewIn set ? set.Lines.Length : 0),
            recipe.Verbs.OfType<CutAlong>().Count(),
            recipe.Verbs.OfType<Trim>().Count(trim => trim.Counted)
        );
    }
}

/// <summary>One step in numbers. Sizes are unfinished, seam allowances included.</summary>
/// <param name="Runs">How often the step is carried out.</param>
/// <param name="Copies">How many units come out of it.</param>
/// <param name="Uses">What goes into one run.</param>
/// <param name="SeamsEach">Seams sewn in one run.</param>
/// <param name="PressesEach">Seams pressed in one run.</param>
/// <param name="CutsEach">Cuts made in one run after a seam is sewn or before a triangle is.</param>
/// <param name="TrimsEach">Counted trims in one run.</param>
public sealed record StepCount(
    PathId Recipe,
    int Number,
    int Runs,
    int Copies,
    ImmutableArray<StepInput> Uses,
    Length Width,
    Length Height,
    int SeamsEach,
    int PressesEach,
    int CutsEach,
    int TrimsEach
)
{
    public long AllSeams => (long)Runs * SeamsEach;

    public long AllTrims => (long)Runs * TrimsEach;
}

/// <summary>A stack of pieces or of units that a step draws on.</summary>
/// <param name="Of">The id of a piece class or of an earlier recipe.</param>
/// <param name="Count">How many go into one run.</param>
public sealed record StepInput(PathId Of, int Count, Length Width, Length Height);
