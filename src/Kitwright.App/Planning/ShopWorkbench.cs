using System.Collections.Concurrent;
using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Optimise.Allocation;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Shop;
using Kitwright.Shop.Revisions;
using Kitwright.Words;

namespace Kitwright.App.Planning;

/// <summary>
/// The shop's quilts, shelf and plans for the pages. A plan is worked out once for each quilt, colorway and set of
/// options, whoever asks; the cache holds the newest and is keyed by the plan's own hash.
/// </summary>
public sealed class ShopWorkbench(
    ImmutableArray<ShelfQuilt> quilts,
    Shelf stock,
    PlanOptions options,
    Func<Task<Shelf>> readShelf,
    Action<string, Quilt>? save = null
) : IWorkbench
{
    private const int MostKept = 256;

    private volatile Shelf shelf = stock;

    private readonly ConcurrentDictionary<string, Lazy<Planned>> plans = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ImmutableStack<Quilt>> revisions = new(
        quilts.Select(q => KeyValuePair.Create(q.Slug, ImmutableStack.Create(q.Quilt))),
        StringComparer.Ordinal
    );

    public ImmutableArray<ShelfQuilt> Quilts => [.. quilts.Select(q => q with { Quilt = revisions[q.Slug].Peek() })];

    public Shelf Shelf => shelf;

    public async Task Refresh()
    {
        shelf = await readShelf();
        // Plans name their fabrics and are drawn in them.
        plans.Clear();
    }

    public PlanOptions Options => options;

    /// <summary>The shop of a database: its projects as they stand, its shelf, and every kept change as a revision.</summary>
    public static async Task<ShopWorkbench> OfStore(ShopStore store, CancellationToken cancel)
    {
        var quilts = ImmutableArray.CreateBuilder<ShelfQuilt>();
        foreach (var line in await store.Projects.All(cancel))
        {
            if (await store.Projects.Find(line.Slug, cancel) is { } project && QuiltFile.Read(project.Current.Json).Value is { } quilt)
            {
                quilts.Add(new(line.Slug, quilt));
            }
        }

        return new(
            quilts.ToImmutable(),
            await store.Stock.Shelf(cancel),
            PlanOptions.Usual,
            () => store.Stock.Shelf(),
            (slug, quilt) => Save(store, slug, quilt).GetAwaiter().GetResult()
        );
    }

    private static async Task Save(ShopStore store, string slug, Quilt quilt)
    {
        if (await store.Projects.Find(slug) is { } project)
        {
            var edit = new Edit(
                Guid.NewGuid(),
                project.Current.Id,
                Message.Of("revision.sentence"),
                QuiltFile.Write(quilt),
                Environment.UserName
            );
            await store.Projects.Keep(project.Project.Id, edit);
        }
    }

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

    public void Keep(string slug, Quilt quilt)
    {
        // On disk first: what the page shows as kept is kept.
        save?.Invoke(slug, quilt);
        revisions.AddOrUpdate(slug, _ => [quilt], (_, before) => before.Push(quilt));
    }

    public Quilt? Before(string slug) =>
        revisions.TryGetValue(slug, out var chain) && chain.Pop() is { IsEmpty: false } earlier ? earlier.Peek() : null;

    public ClothPlan? Handbook(ClothPlan cloth) =>
        HandbookWay
            .Plan(new(cloth.Id, cloth.Letter, cloth.Roles, cloth.Fabric, cloth.Terms, cloth.Demand, options.SpareStrips, options.Goal))
            .Value;

    public Checked<KitPlan> Kits(Quilt quilt, ImmutableSortedDictionary<string, int> wanted, CancellationToken cancel) =>
        KitRoom.Plan(
            quilt,
            shelf,
            wanted,
            withBacking: false,
            colorway =>
            {
                var planned = Plan(quilt, colorway.Name);
                return new(planned.Plan, planned.Trace, planned.Findings);
            },
            KitTerms.Usual,
            BoltBudget.Typing,
            cancel
        );

    private Planned Make(Quilt quilt, Colorway? colorway)
    {
        // A change that is tried may leave a quilt that cannot be; the rules of the file say what is wrong with it.
        var read = QuiltFile.Read(QuiltFile.Write(quilt));
        if (read.Value is null)
        {
            return new(null, null, read.Findings, Trace.None);
        }

        var planned = PlanningLine.Plan(
            quilt,
            colorway,
            shelf.Fabrics,
            options,
            Cutters.Named(options.Budget, CancellationToken.None)
        );
        return new(planned.Plan, planned.Plan?.Design ?? Layout.Of(quilt), planned.Findings, planned.Trace);
    }
}
