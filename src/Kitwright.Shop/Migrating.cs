using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Kitwright.Shop;

/// <summary>Brings a database to the newest tables, by one process at a time.</summary>
/// <remarks>
/// EF Core guards a migration by a row in a table of its own, which a process that is killed leaves behind: the next
/// one would wait for ever (EF Core documentation, "SQLite limitations", "Concurrent migrations protection"). Here a
/// lock on a file beside the database does the guarding, which the system takes back; whoever holds it may drop the row.
/// </remarks>
internal static class Migrating
{
    private const string Leftover = "DROP TABLE IF EXISTS \"__EFMigrationsLock\";";

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(50);

    public static void Run(string path, Func<ShopContext> newContext)
    {
        using var held = Hold(path + ".opening");
        SqliteFile.Prepare(path);
        if (Known().Except(SqliteFile.Migrations(path)).Any())
        {
            using var context = newContext();
            context.Database.ExecuteSqlRaw(Leftover);
            context.Database.Migrate();
        }
    }

    // Asked of EF Core, the same takes a third of a second at every start.
    private static IEnumerable<string> Known() =>
        typeof(ShopContext).Assembly.GetTypes().Select(type => type.GetCustomAttribute<MigrationAttribute>()?.Id).OfType<string>();

    private static FileStream Hold(string path)
    {
        for (var waited = TimeSpan.Zero; ; waited += Step)
        {
            try
            {
                return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (waited < LongestWait)
            {
                Thread.Sleep(Step);
            }
        }
    }
}
