using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>How a cutting problem becomes a plan: first fit, or an optimizer behind its fence.</summary>
public delegate Checked<ClothPlan> CutCloth(ClothProblem problem);

/// <summary>What a plan assumes beyond the quilt itself.</summary>
/// <param name="Terms">Cloth and shop.</param>
/// <param name="SpareStrips">Kit margin per fabric, in strips of its widest kind.</param>
/// <param name="OneLengthPerFabric">Roles that a colorway fills with one fabric share a length; else one a role.</param>
/// <param name="Budget">Name of the work limit, for the record.</param>
public sealed record PlanOptions(ClothTerms Terms, int SpareStrips, CutGoal Goal, bool OneLengthPerFabric, string Budget)
{
    /// <summary>The shop's techniques by kind of unit, where a quilt states none; see <see cref="TechniqueBook"/>.</summary>
    public ImmutableSortedDictionary<string, string> Techniques { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The shop's habits of pressing, where a quilt states none; null for the usual ones.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableSortedDictionary<string, string>? Pressing { get; init; }

    /// <summary>What counts first in cutting, and what then.</summary>
    public ImmutableArray<CutAim> Order { get; init; } = CutOrder.Usual;

    public static PlanOptions Usual { get; } = new(ClothTerms.Usual, 1, CutGoal.ByTheStep, false, "normal");
}

/// <summary>The pipeline from quilt and colorway to the plan document: a pure function of its inputs.</summary>
public static class QuiltPlanner
{
    private static readonly ImmutableSortedDictionary<string, string> Unstated = ImmutableSortedDictionary<string, string>.Empty;

    /// <param name="openSeams">Where not all seams can nest, which are pressed open; a quick way by default.</param>
    public static Checked<QuiltPlan> Plan(
        Quilt quilt,
        Colorway? colorway,
        ImmutableArray<Fabric> fabrics,
        PlanOptions options,
        CutCloth cut,
        OpenSeams? openSeams = null
    )
    {
        var prints = PrintRoles.Of(quilt, colorway, fabrics);
        var groups = SwatchKey.Groups(quilt, colorway, options.OneLengthPerFabric);
        var letters = new Letters(groups);
        var key = SwatchKey.Of(quilt, colorway, fabrics, letters, prints);
        var design = Layout.Of(quilt);
        var pieced = PiecingPlan.Of(quilt, design, letters, options.Terms, options.Techniques, prints);
        if (pieced.Value is not { } parts)
        {
            return new(null, [.. key.Findings, .. pieced.Findings]);
        }

        if (MatchedRooms.TooWide(parts, key.Fabrics, options.Terms).ToImmutableArray() is { IsEmpty: false } tooWide)
        {
            return new(null, [.. key.Findings, .. pieced.Findings, .. tooWide]);
        }

        var problems = ClothProblems.Of(parts, key.Fabrics, options);
        var cloths = problems.Select(p => ClothProblems.Cut(p, cut)).ToArray();
        var findings = key.Findings.AddRange(PressingBook.Unknown(quilt.Pressing)).AddRange(pieced.Findings).AddRange(cloths.SelectMany(c => c.Findings));
        if (cloths.Any(c => c.Value is null))
        {
            return new(null, findings);
        }

        ImmutableArray<ClothPlan> plans = [.. cloths.Select(c => c.Value!)];
        var hash = PlanHash.Of(quilt, colorway, options, fabrics);
        return new(
            new(
                quilt.Name,
                colorway?.Name,
                PlanHash.Mark(hash),
                hash,
                PlanHash.Engine,
                options.Budget,
                quilt.Seam,
                quilt.RulerStep,
                key.Fabrics,
                design,
                parts.Pieces,
                plans,
                PressingPlan.Of(
                    parts.Sewing,
                    parts.Pieces,
                    key.Fabrics,
                    design.Blocks,
                    quilt.Seam,
                    PressingRules.Of((options.Pressing ?? Unstated).SetItems(quilt.Pressing ?? Unstated)),
                    openSeams ?? GreedyOpening.Solve
                ),
                parts.Binding,
                parts.Backing,
                NeedsOf.Plan(quilt, plans, parts, key.Fabrics)
            )
            {
                Prints = quilt.Prints,
            },
            findings
        );
    }
}
