using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Kitwright.Shop;

/// <summary>
/// One SQLite file as a shop needs it: write-ahead log, every commit flushed to the disk (synchronous = FULL: a commit
/// that was answered outlives a power cut), foreign keys enforced, writers waiting for one another.
/// </summary>
internal static class SqliteFile
{
    private const int SecondsToWait = 10;

    public static DbContextOptions<ShopContext> Options(string path) =>
        new DbContextOptionsBuilder<ShopContext>()
            .UseSqlite(ConnectionString(path))
            .AddInterceptors(new Durable())
            .Options;

    public static string ConnectionString(string path) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            ForeignKeys = true,
            DefaultTimeout = SecondsToWait,
        }.ToString();

    /// <summary>Makes the file where it is missing and turns its write-ahead log on, which the file remembers.</summary>
    public static void Prepare(string path)
    {
        using var connection = new SqliteConnection(ConnectionString(path));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = WAL;";
        command.ExecuteNonQuery();
    }

    /// <summary>Ids of the migrations that have been applied to the file, in EF Core's own table; none in a new file.</summary>
    public static IReadOnlySet<string> Migrations(string path)
    {
        using var connection = new SqliteConnection(ConnectionString(path));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT COUNT(*) FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsHistory';";
        var applied = new HashSet<string>(StringComparer.Ordinal);
        if (command.ExecuteScalar() is 0L)
        {
            return applied;
        }

        command.CommandText = "SELECT \"MigrationId\" FROM \"__EFMigrationsHistory\";";
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            applied.Add(reader.GetString(0));
        }

        return applied;
    }

    private sealed class Durable : DbConnectionInterceptor
    {
        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA synchronous = FULL;";
            command.ExecuteNonQuery();
        }

        public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancel = default)
        {
            ConnectionOpened(connection, eventData);
            return Task.CompletedTask;
        }
    }
}
