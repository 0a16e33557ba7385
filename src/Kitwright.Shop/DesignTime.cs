using Microsoft.EntityFrameworkCore.Design;

namespace Kitwright.Shop;

/// <summary>For the migration tool only: the model over SQLite, without a file.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<ShopContext>
{
    public ShopContext CreateDbContext(string[] args) => new(SqliteFile.Options(":memory:"));
}
