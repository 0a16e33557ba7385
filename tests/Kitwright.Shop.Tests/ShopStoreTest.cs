using Kitwright.Measure;
using Kitwright.Shop.Ledger;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;
using Xunit;

namespace Kitwright.Shop.Tests;

public sealed class ShopStoreTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public void Every_connection_is_durable_and_keeps_foreign_keys()
    {
        using var shop = new OpenedShop();
        using var context = shop.Store.NewContext();
        context.Database.OpenConnection();
        Assert.Equal("wal", Pragma(context, "journal_mode"));
        Assert.Equal("2", Pragma(context, "synchronous"));
        Assert.Equal("1", Pragma(context, "foreign_keys"));
    }

    [Fact]
    public void The_migrations_make_the_model()
    {
        using var shop = new OpenedShop();
        using var context = shop.Store.NewContext();
        Assert.False(context.Database.HasPendingModelChanges());
        Assert.Empty(context.Database.GetPendingMigrations());
    }

    [Fact]
    public void The_model_made_ahead_is_the_model()
    {
        using var shop = new OpenedShop();
        using var context = shop.Store.NewContext();
        Assert.IsType<Compiled.ShopContextModel>(context.Model);
        Assert.Equal(Described(context.GetService<IDesignTimeModel>().Model), Described(context.Model));
    }

    // In words, since each kind of model has classes of its own.
    private static IEnumerable<string> Described(IModel model) =>
        from entity in model.GetEntityTypes()
        from line in entity.GetProperties().Select(p => $"{p.Name} {p.ClrType} {p.IsNullable} {p.GetMaxLength()} {p.IsConcurrencyToken} {p.ValueGenerated} {p.GetColumnName()} {p.GetColumnType()} {p.GetTypeMapping().Converter?.ProviderClrType}")
            .Concat(entity.GetKeys().Select(key => $"key {key.IsPrimaryKey()} {string.Join(' ', key.Properties.Select(p => p.Name))}"))
            .Concat(entity.GetIndexes().Select(index => $"index {index.IsUnique} {string.Join(' ', index.Properties.Select(p => p.Name))}"))
            .Concat(entity.GetForeignKeys().Select(key => $"foreign {key.PrincipalEntityType.Name} {key.DeleteBehavior} {string.Join(' ', key.Properties.Select(p => p.Name))}"))
            .Order(StringComparer.Ordinal)
        select $"{entity.Name} {entity.GetTableName()} {line}";

    [Fact]
    public async Task Two_writers_lose_nothing()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        using var other = ShopStore.Open(shop.Path, shop.Clock);
        var same = new Booking(Guid.NewGuid(), "Wren", [new("b2", EntryKind.Cut, Length.Yard)]);
        await Task.WhenAll(
            Enumerable.Range(0, 40).Select(i => Task.Run(
                async () =>
                {
                    var stock = i % 2 == 0 ? shop.Store.Stock : other.Stock;
                    Assert.True((await stock.Book(new(Guid.NewGuid(), "Wren", [new("b1", EntryKind.Cut, Length.Inch)]), Cancel)).Good);
                    Assert.True((await stock.Book(same, Cancel)).Good);
                },
                Cancel
            ))
        );
        Assert.Equal(Length.Inches(320), await shop.OnHand("b1"));
        Assert.Equal(Length.Inches(144), await shop.OnHand("b2"));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public void A_migration_that_was_killed_does_not_keep_the_next_one_out()
    {
        using var shop = new OpenedShop();
        shop.Store.Dispose();
        File.Delete(shop.Path);
        using (var connection = new SqliteConnection($"Data Source={shop.Path};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            // As EF Core leaves it behind.
            command.CommandText =
                "CREATE TABLE __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL);"
                + "INSERT INTO __EFMigrationsLock VALUES (1, '2031-04-05')";
            command.ExecuteNonQuery();
        }

        shop.Reopen();
        using var context = shop.Store.NewContext();
        Assert.Empty(context.Database.GetPendingMigrations());
    }

    private static string Pragma(ShopContext context, string name)
    {
        using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return command.ExecuteScalar()!.ToString()!;
    }
}
