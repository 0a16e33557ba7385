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
public sealed class ShopWorkbench : IWorkbench
{
    private const int MostKept = 256;

    private const string Ended = "ended-early";

    private readonly ShopStore store;
    private readonly ConcurrentDictionary<string, Lazy<Planned>> plans = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ImmutableStack<Quilt>> revisions = new(StringComparer.Ordinal);
    private volatile Standing standing;

    private ShopWorkbench(ShopStore store, Standing standing)
    {
        this.store = store;
        this.standing = standing;
        TakeOn(standing.Quilts);
    }

    public ImmutableArray<ShelfQuilt> Quilts => [.. standing.Quilts.Select(q => q with { Quilt = revisions[q.Slug].Peek() })];

    public Shelf Shelf => standing.Shelf;

    public ShopTerms Terms => standing.Terms;

    public PlanOptions Options => standing.Options;

    /// <summary>The shop of a database: its projects as they stand, its shelf, and every kept change as a revision.</summary>
    public static async Task<ShopWorkbench> OfStore(ShopStore store, CancellationToken cancel) =>
        new(store, await Standing.Of(store, cancel));

    public async Task Refresh()
    {
        var now = await Standing.Of(store, CancellationToken.None);
        TakeOn(now.Quilts);
        standing = now;
        // Plans name their fabrics and are made under the terms.
        plans.Clear();
    }

    // A quilt that somebody else has changed is one change further on here too.
    private void TakeOn(ImmutableArray<ShelfQuilt> quilts)
    {
        foreach (var (slug, quilt) in quilts)
        {
            revisions.AddOrUpdate(
                slug,
                _ => [quilt],
                (_, chain) => QuiltFile.Write(chain.Peek()) == QuiltFile.Write(quilt) ? chain : chain.Push(quilt)
            );
        }
    }

    private static async Task<Checked<Kept>> Save(ShopStore store, string slug, Quilt quilt)
    {
        if (await store.Projects.Find(slug) is not { } project)
        {
            return Checked<Kept>.Failed(Finding.Of("revision.no-project", $"quilts/{slug}"));
        }

        var edit = new Edit(
            Guid.NewGuid(),
            project.Current.Id,
            Message.Of("revision.sentence"),
            QuiltFile.Write(quilt),
            Environment.UserName
        );
        return await store.Projects.Keep(project.Project.Id, edit);
    }

    public Planned Plan(Quilt quilt, string? colorway) => Plan(quilt, colorway, Options);

    public Planned Plan(Quilt quilt, string? colorway, PlanOptions options)
    {
        var chosen = colorway is null ? null : quilt.Colorway(colorway);
        if (plans.Count > MostKept)
        {
            plans.Clear();
        }

        return plans
            .GetOrAdd(PlanHash.Of(quilt, chosen, options, Shelf.Fabrics), _ => new(() => Make(quilt, chosen, options, Cutters.Named(options.Budget, CancellationToken.None))))
            .Value;
    }

    public Planned Look(Quilt quilt, string? colorway, PlanOptions options, Action<CutStep> watch, CancellationToken cancel)
    {
        var chosen = colorway is null ? null : quilt.Colorway(colorway);
        var planned = Make(quilt, chosen, options, Cutters.Named(options.Budget, cancel, watch));
        if (!cancel.IsCancellationRequested)
        {
            plans[PlanHash.Of(quilt, chosen, options, Shelf.Fabrics)] = new(planned);
            return planned;
        }

        // A plan of a search that was ended must not bear the mark of the one that a whole search gives.
        var hash = PlanHash.Of(quilt, chosen, options with { Budget = Ended }, Shelf.Fabrics);
        return planned.Plan is { } plan
            ? planned with { Plan = plan with { Hash = hash, Mark = PlanHash.Mark(hash), Budget = Ended } }
            : planned;
    }

    public ImmutableArray<Finding> Keep(string slug, Quilt quilt)
    {
        // On disk first: what the page shows as kept is kept.
        var kept = Save(store, slug, quilt).GetAwaiter().GetResult();
        if (kept.Value is not null)
        {
            revisions.AddOrUpdate(slug, _ => [quilt], (_, before) => before.Push(quilt));
        }

        return kept.Findings;
    }

    public Quilt? Before(string slug) =>
        revisions.TryGetValue(slug, out var chain) && chain.Pop() is { IsEmpty: false } earlier ? earlier.Peek() : null;

    // What is cut along the selvage has no strips to hold it against.
    public ClothPlan? Handbook(ClothPlan cloth) =>
        !cloth.Sections.IsEmpty
            ? null
            : HandbookWay
            .Plan(new(cloth.Id, cloth.Letter, cloth.Roles, cloth.Fabric, cloth.Terms, cloth.Demand, Options.SpareStrips, Options.Goal))
            .Value;

    public Checked<KitPlan> Kits(Quilt quilt, ImmutableSortedDictionary<string, int> wanted, CancellationToken cancel) =>
        KitRoom.Plan(
            quilt,
            Shelf,
            wanted,
            withBacking: false,
            colorway =>
            {
                var planned = Plan(quilt, colorway.Name);
                return new(planned.Plan, planned.Trace, planned.Findings);
            },
            Terms.Kits,
            BoltBudget.Typing,
            cancel
        );

    private Planned Make(Quilt quilt, Colorway? colorway, PlanOptions options, CutCloth cut)
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
            Shelf.Fabrics,
            options,
            cut
        );
        return new(planned.Plan, planned.Plan?.Design ?? Layout.Of(quilt), planned.Findings, planned.Trace);
    }
}
