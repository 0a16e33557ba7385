using System.Collections.Concurrent;
using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Fabrics;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.App.Planning;

/// <summary>
/// The shop's quilts, shelf and plans for the pages. A plan is worked out once for each quilt, colorway and set of
/// options, whoever asks; the cache holds the newest and is keyed by the plan's own hash.
/// </summary>
public sealed class ShopWorkbench(ImmutableArray<ShelfQuilt> quilts, Shelf shelf, PlanOptions options) : IWorkbench
{
    private const int MostKept = 256;

    private readonly ConcurrentDictionary<string, Lazy<Planned>> plans = new(StringComparer.Ordinal);

    public ImmutableArray<ShelfQuilt> Quilts => quilts;

    public ImmutableArray<Fabric> Fabrics => shelf.Fabrics;

    public Shelf Shelf => shelf;

    public PlanOptions Options => options;

    public static ShopWorkbench OfExamples() =>
        new(
            [.. ExampleShop.Quilts().Select(q => new ShelfQuilt(q.Slug, q.Quilt))],
            ExampleShop.Shelf(),
            PlanOptions.Usual
        );

    public Planned Plan(Quilt quilt, string? colorway)
    {
        var chosen = colorway is null ? null : quilt.Colorway(colorway);
        if (plans.Count > MostKept)
        {
            plans.Clear();
        }

        return plans
            .GetOrAdd(PlanHash.Of(quilt, chosen, options), _ => new(() => Make(quilt, chosen)))
            .Value;
    }

    private Planned Make(Quilt quilt, Colorway? colorway)
    {
        var planned = PlanningLine.Plan(
            quilt,
            colorway,
            shelf.Fabrics,
            options,
            Cutters.Named(options.Budget, CancellationToken.None)
        );
        return new(planned.Plan, planned.Findings, planned.Trace);
    }
}
