using System.Security.Cryptography;
using System.Text;
using Kitwright.Quilts;
using Kitwright.Shop.Ledger;
using Kitwright.Shop.Revisions;
using Kitwright.Shop.Rows;
using Kitwright.Stock;
using Kitwright.Words;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Demo;

/// <summary>The demo shop of our own invented scenario: put in once, taken out by one call.</summary>
public sealed class DemoShop
{
    private const string By = "Kitwright";

    private readonly ShopStore store;

    internal DemoShop(ShopStore store) => this.store = store;

    public async Task<DemoState> State(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return (await context.Demo.AsNoTracking().SingleAsync(cancel)).State;
    }

    /// <summary>Puts the demo shop in, all of it or nothing; does nothing where it is, or was taken out.</summary>
    /// <returns>Whether it was put in now.</returns>
    public Task<bool> Seed(CancellationToken cancel = default) => store.Write(context => Seed(context, cancel), cancel);

    /// <summary>
    /// Takes out everything that came with the demo shop and what was booked on it; the shop's own projects, fabrics
    /// and bolts stay.
    /// </summary>
    public Task<bool> Empty(CancellationToken cancel = default) => store.Write(context => Empty(context, cancel), cancel);

    private async Task<bool> Seed(ShopContext context, CancellationToken cancel)
    {
        var demo = await context.Demo.SingleAsync(cancel);
        if (demo.State != DemoState.Absent)
        {
            return false;
        }

        foreach (var (name, json) in DemoFiles.QuiltFiles())
        {
            var quilt = QuiltFile.Read(json).Value ?? throw new InvalidDataException($"The demo quilt {name} has faults.");
            var request = new BeginRequest(IdOf(name), Slug.Of(name), quilt.Name, json, Message.Of("revision.demo"), By, Demo: true);
            await Beginning.Run(context, request, store.Now(), cancel);
        }

        var shelf = StockCsv.Read(DemoFiles.StockFile()).Value ?? throw new InvalidDataException("The demo stock file has faults.");
        var import = await Importing.Run(context, new(IdOf("stock"), By, shelf, DryRun: false, Demo: true), store.Now(), cancel);
        if (import.Value is null)
        {
            throw new InvalidDataException("The demo stock does not fit what is on the shelf.");
        }

        demo.State = DemoState.Present;
        return true;
    }

    private static async Task<bool> Empty(ShopContext context, CancellationToken cancel)
    {
        var demo = await context.Demo.SingleAsync(cancel);
        if (demo.State != DemoState.Present)
        {
            return false;
        }

        demo.State = DemoState.Emptying;
        await context.SaveChangesAsync(cancel);
        var bolts = context.Bolts.Where(b => b.Demo).Select(b => b.Id);
        var bookings = await context.Entries.Where(e => bolts.Contains(e.Bolt)).Select(e => e.Booking).Distinct().ToListAsync(cancel);
        await context.Entries.Where(e => bolts.Contains(e.Bolt)).ExecuteDeleteAsync(cancel);
        await context.Balances.Where(b => bolts.Contains(b.Bolt)).ExecuteDeleteAsync(cancel);
        await context.Bolts.Where(b => b.Demo).ExecuteDeleteAsync(cancel);
        var leaving = context.Fabrics.Where(f => f.Demo && !context.Bolts.Any(b => b.Fabric == f.Number)).Select(f => f.Number);
        bookings.AddRange(await context.OffcutEntries.Where(e => leaving.Contains(e.Fabric)).Select(e => e.Booking).Distinct().ToListAsync(cancel));
        await context.OffcutEntries.Where(e => leaving.Contains(e.Fabric)).ExecuteDeleteAsync(cancel);
        await context.OffcutBalances.Where(b => leaving.Contains(b.Fabric)).ExecuteDeleteAsync(cancel);
        // A demo fabric of which the shop has bolts of its own stays.
        await context.Fabrics.Where(f => f.Demo && !context.Bolts.Any(b => b.Fabric == f.Number)).ExecuteDeleteAsync(cancel);
        await context.Bookings.Where(b => bookings.Contains(b.Id) && !context.Entries.Any(e => e.Booking == b.Id) && !context.OffcutEntries.Any(e => e.Booking == b.Id))
            .ExecuteDeleteAsync(cancel);
        await EmptyProjects(context, cancel);
        demo.State = DemoState.Emptied;
        return true;
    }

    private static async Task EmptyProjects(ShopContext context, CancellationToken cancel)
    {
        var projects = await context.Projects.Where(p => p.Demo).Select(p => p.Id).ToListAsync(cancel);
        // From the newest to the first, since each rests on its base.
        var revisions = await context.Revisions.Where(r => projects.Contains(r.Project)).OrderByDescending(r => r.Number).Select(r => r.Id).ToListAsync(cancel);
        foreach (var revision in revisions)
        {
            await context.Revisions.Where(r => r.Id == revision).ExecuteDeleteAsync(cancel);
        }

        await context.Projects.Where(p => projects.Contains(p.Id)).ExecuteDeleteAsync(cancel);
    }

    // The same on every machine, so that putting in twice cannot begin a project twice.
    private static Guid IdOf(string name) => new(SHA256.HashData(Encoding.UTF8.GetBytes("kitwright demo " + name)).AsSpan(0, 16));
}
