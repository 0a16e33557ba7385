using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>
/// Weighs the techniques of each kind of unit in a quilt: the whole quilt is pieced and cut once for each, all else
/// left as it is, because a strip set or a square of eight changes what shares a strip with it.
/// </summary>
public static class TechniqueComparison
{
    /// <summary>How many units of each kind a quilt has, by the kind's name; empty where it cannot be pieced.</summary>
    public static ImmutableSortedDictionary<string, int> KindsIn(Quilt quilt)
    {
        var letters = new Letters(SwatchKey.Groups(quilt, null, onePerFabric: false));
        return PiecingPlan.Of(quilt, Layout.Of(quilt), letters, ClothTerms.Usual).Value?.UnitKinds ?? ImmutableSortedDictionary<string, int>.Empty;
    }

    public static ImmutableArray<UnitTechniques> Of(Quilt quilt, Colorway? colorway, ImmutableArray<Fabric> shelf, PlanOptions options, CutCloth cut)
    {
        var prints = PrintRoles.Of(quilt, colorway, shelf);
        var letters = new Letters(SwatchKey.Groups(quilt, colorway, options.OneLengthPerFabric));
        var design = Layout.Of(quilt);
        if (Pieced(quilt).Value is not { } now)
        {
            return [];
        }

        return
        [
            .. from kind in TechniqueBook.Kinds
            where now.UnitKinds.ContainsKey(kind.Name)
            select new UnitTechniques(kind, now.UnitKinds[kind.Name], Chosen(quilt, kind, options), [.. kind.Techniques.Select(t => Figures(kind, t)).OfType<TechniqueFigures>()]),
        ];

        Findings.Checked<Pieced> Pieced(Quilt changed) => PiecingPlan.Of(changed, design, letters, options.Terms, options.Techniques, prints);

        TechniqueFigures? Figures(UnitKind kind, Technique technique)
        {
            // Roles that have a technique of their own keep it.
            var changed = quilt with { Techniques = quilt.Techniques.SetItem(kind.Name, technique.Name) };
            if (Pieced(changed).Value is not { } pieced)
            {
                return null;
            }

            var fabrics = letters.Groups.Select(roles => new PlanFabric(letters.Of(roles[0]), roles, null, "", "") { Match = prints.Of(roles[0]).Match, PanelLength = prints.Of(roles[0]).Panel }).ToImmutableArray();
            var cloths = ClothProblems.Of(pieced, fabrics, options).Select(problem => ClothProblems.Cut(problem, cut).Value).ToArray();
            if (cloths.Any(cloth => cloth is null))
            {
                return null;
            }

            var recipes = pieced.Sewing.Recipes;
            long Count(Func<Verb, int> of) => recipes.Sum(r => (long)r.Runs * r.Verbs.Sum(of));
            return new(
                technique,
                cloths.Aggregate(Length.Zero, (sum, cloth) => sum + cloth!.Cut),
                cloths.Sum(cloth => (long)cloth!.Figures.Strips + cloth.Figures.SubCuts + cloth.Figures.Trims) + Count(v => v is CutAlong ? 1 : 0),
                Count(v => v is Sew or SewPart or CloseSeam ? 1 : v is SewIn sewIn ? sewIn.Lines.Length : 0),
                Count(v => v is Trim { Counted: true } ? 1 : 0)
            );
        }
    }

    /// <summary>What the quilt, or else the shop, has chosen for a kind as a whole.</summary>
    private static string Chosen(Quilt quilt, UnitKind kind, PlanOptions options) =>
        new[] { quilt.Techniques.GetValueOrDefault(kind.Name), options.Techniques.GetValueOrDefault(kind.Name) }
            .FirstOrDefault(technique => technique is not null && kind.Has(technique)) ?? kind.Techniques[0].Name;
}

/// <summary>One kind of unit in a quilt, and what each way of making it comes to.</summary>
/// <param name="Units">How many the quilt takes.</param>
/// <param name="Chosen">The name of the technique that is planned.</param>
public sealed record UnitTechniques(UnitKind Kind, int Units, string Chosen, ImmutableArray<TechniqueFigures> Ways);

/// <summary>What the whole quilt top comes to with one technique.</summary>
/// <param name="Cloth">Length that cutting takes, all fabrics together, without the kit's margin.</param>
/// <param name="Cuts">Cuts with the cutter: strips, sub-cuts, trims of pieces, and cuts after a seam.</param>
/// <param name="Seams">Seams sewn.</param>
/// <param name="Trims">Units squared up.</param>
public sealed record TechniqueFigures(Technique Technique, Length Cloth, long Cuts, long Seams, long Trims);
