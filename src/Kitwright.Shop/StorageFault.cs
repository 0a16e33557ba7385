using Kitwright.Findings;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop;

/// <summary>
/// What the disk or another station does to a write, as findings. The write's transaction is rolled back by then:
/// nothing of it is kept. Codes: SQLite documentation, "Result and Error Codes".
/// </summary>
public static class StorageFault
{
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    /// <summary>The finding; null for a fault that is ours.</summary>
    public static Finding? Of(Exception fault, string path) =>
        (fault is DbUpdateException { InnerException: { } inner } ? inner : fault) is SqliteException sqlite
            ? sqlite.SqliteErrorCode switch
            {
                Busy or Locked => Finding.Of("storage.busy", path, ("path", path)),
                ReadOnly or CannotOpen => Finding.Of("storage.read-only", path, ("path", path)),
                Full => Finding.Of("storage.full", path, ("path", path)),
                InputOutput => Finding.Of("storage.disk", path, ("path", path)),
                Corrupt or NotADatabase => Finding.Of("storage.damaged", path, ("path", path)),
                _ => null,
            }
            : null;
}
