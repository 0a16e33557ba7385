using System.Collections.Immutable;
using Kitwright.App.Planning;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Web;

/// <summary>
/// Where the pages take everything from. Equal questions get equal answers, quickly when asked again, from any thread.
/// </summary>
public interface IWorkbench
{
    ImmutableArray<ShelfQuilt> Quilts { get; }

    Shelf Shelf { get; }

    /// <summary>What the shop assumes wherever it plans.</summary>
    ShopTerms Terms { get; }

    /// <summary>What every plan of the shop assumes.</summary>
    PlanOptions Options { get; }

    /// <summary>
    /// The checked plan of a quilt, kept or only tried, in a colorway or none. A quilt that cannot be is answered
    /// with findings.
    /// </summary>
    Planned Plan(Quilt quilt, string? colorway);

    /// <summary>The same under other terms than the shop's.</summary>
    Planned Plan(Quilt quilt, string? colorway, PlanOptions options);

    /// <summary>
    /// The same, looked for anew while somebody watches. A cancel answers with the best plan so far, which is checked like
    /// any other and not kept for whoever asks next.
    /// </summary>
    Planned Look(Quilt quilt, string? colorway, PlanOptions options, Action<CutStep> watch, CancellationToken cancel);

    /// <summary>From here on, quilts, stock and terms are as the shop's database has them now.</summary>
    Task Refresh();

    /// <summary>Keeps a quilt as a new revision; earlier ones stay. Findings where nothing was kept.</summary>
    ImmutableArray<Finding> Keep(string slug, Quilt quilt);

    /// <summary>The revision before the one that is kept; null for the first.</summary>
    Quilt? Before(string slug);

    /// <summary>What the handbook's strip-by-strip way would take of the same cloth; null where it does not go.</summary>
    ClothPlan? Handbook(ClothPlan cloth);

    /// <summary>Kits of a quilt from the shelf. It may take seconds.</summary>
    /// <param name="wanted">How many of each colorway, by name; 0 asks only how many the bolts carry.</param>
    Checked<KitPlan> Kits(Quilt quilt, ImmutableSortedDictionary<string, int> wanted, CancellationToken cancel);
}

/// <summary>A quilt of the shop.</summary>
/// <param name="Slug">Its name in addresses: lower case letters, digits and hyphens.</param>
public sealed record ShelfQuilt(string Slug, Quilt Quilt);

/// <summary>A plan with what was found about it.</summary>
/// <param name="Plan">Absent where a fault leaves none.</param>
/// <param name="Design">How the quilt looks; absent only where the quilt itself cannot be.</param>
public sealed record Planned(QuiltPlan? Plan, Design? Design, ImmutableArray<Finding> Findings, Trace Trace);
