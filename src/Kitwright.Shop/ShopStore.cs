using Kitwright.Findings;
using Kitwright.Shop.Demo;
using Kitwright.Shop.Ledger;
using Kitwright.Shop.Revisions;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop;

/// <summary>The shop's own database, in one file: projects, stock and terms. Safe to use from many threads.</summary>
public sealed class ShopStore : IDisposable
{
    private readonly string path;
    private readonly DbContextOptions<ShopContext> options;

    private ShopStore(string path, TimeProvider time)
    {
        this.path = path;
        options = SqliteFile.Options(path);
        Time = time;
        Projects = new(this);
        Stock = new(this);
        Offcuts = new(this);
        Columns = new(this);
        Terms = new(this);
        Demo = new(this);
    }

    /// <summary>Where the database file lies.</summary>
    public string Folder => Path.GetDirectoryName(path)!;

    public ProjectChains Projects { get; }
    public StockLedger Stock { get; }
    public OffcutLedger Offcuts { get; }
    public ColumnBook Columns { get; }
    public TermsBook Terms { get; }
    public DemoShop Demo { get; }
    internal TimeProvider Time { get; }

    /// <summary>Opens the file, makes it and its folder where they are missing, and brings it to the newest tables.</summary>
    /// <param name="path">The database file; two more stand beside it while it is open.</param>
    /// <exception cref="StorageException">The file cannot be read or written, or is no shop's.</exception>
    /// <exception cref="IOException">The file cannot be made or is held by another program.</exception>
    public static ShopStore Open(string path, TimeProvider time)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var store = new ShopStore(full, time);
        try
        {
            Migrating.Run(full, store.NewContext);
        }
        catch (Exception fault) when (StorageFault.Of(fault, full) is { } finding)
        {
            throw new StorageException(finding, fault);
        }

        return store;
    }

    /// <summary>A context for one piece of reading; the caller disposes of it.</summary>
    public ShopContext NewContext() => new(options);

    internal DateTimeOffset Now() => Time.GetUtcNow();

    /// <summary>
    /// Does all of <paramref name="write"/> or nothing. Writers take their turn from the first statement on, so that
    /// what is read inside is still so when it is written.
    /// </summary>
    /// <exception cref="StorageException">The disk or another station is in the way; nothing was kept.</exception>
    internal async Task<T> Write<T>(Func<ShopContext, Task<T>> write, CancellationToken cancel)
    {
        try
        {
            await using var context = NewContext();
            await using var transaction = await context.Database.BeginTransactionAsync(cancel);
            var outcome = await write(context);
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
            return outcome;
        }
        catch (Exception fault) when (StorageFault.Of(fault, path) is { } finding)
        {
            throw new StorageException(finding, fault);
        }
    }

    /// <summary>The same, where the disk or another station in the way is a finding.</summary>
    internal async Task<Checked<T>> TryWrite<T>(Func<ShopContext, Task<Checked<T>>> write, CancellationToken cancel)
        where T : class
    {
        try
        {
            return await Write(write, cancel);
        }
        catch (StorageException fault)
        {
            return Checked<T>.Failed(fault.Finding);
        }
    }

    /// <summary>Closes the file's idle connections.</summary>
    public void Dispose() => SqliteConnection.ClearPool(new(SqliteFile.ConnectionString(path)));
}
