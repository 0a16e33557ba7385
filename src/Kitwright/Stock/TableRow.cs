using System.Collections.Immutable;

namespace Kitwright.Stock;

/// <summary>One row of a table that somebody sent, as text; the first row holds the names of the columns.</summary>
/// <param name="Line">The line of the file (or row of the sheet) on which it starts, counted from 1.</param>
public readonly record struct TableRow(int Line, ImmutableArray<string> Cells)
{
    public bool IsBlank => Cells.All(string.IsNullOrWhiteSpace);
}

/// <summary>How much of a file is read before it is refused; every reader of tables stays within these.</summary>
public static class TableLimits
{
    /// <summary>Bytes of a file.</summary>
    public const int Bytes = 32 * 1024 * 1024;

    /// <summary>Rows below the header. No shop has so many bolts; a file that long is something else.</summary>
    public const int Rows = 100_000;

    /// <summary>Cells in a row.</summary>
    public const int Cells = 200;

    /// <summary>Characters in a cell.</summary>
    public const int Characters = 1_000;
}
