using Microsoft.EntityFrameworkCore.Migrations;

namespace Kitwright.Shop.Migrations;

/// <summary>
/// Keeps rows as they were written, below all code of ours. A migration that builds such a table anew drops its
/// triggers and must add them again.
/// </summary>
internal static class NeverChanged
{
    /// <summary>Refuses every update, and every removal except while the demo shop is taken out.</summary>
    public static void Add(MigrationBuilder migration, string table)
    {
        migration.Sql(
            $"""
            CREATE TRIGGER "{table}_never_changed" BEFORE UPDATE ON "{table}"
            BEGIN SELECT RAISE(ABORT, '{table} are never changed'); END;
            """
        );
        migration.Sql(
            $"""
            CREATE TRIGGER "{table}_never_removed" BEFORE DELETE ON "{table}"
            WHEN (SELECT "State" FROM "Demo") <> 'Emptying'
            BEGIN SELECT RAISE(ABORT, '{table} are never removed'); END;
            """
        );
    }
}
