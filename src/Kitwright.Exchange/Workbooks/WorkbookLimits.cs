namespace Kitwright.Exchange.Workbooks;

/// <summary>How much of a workbook is read before it is refused, packed and unpacked.</summary>
/// <remarks>What a part claims to unpack to is not believed: bytes are counted as they come.</remarks>
internal static class WorkbookLimits
{
    /// <summary>The file itself; 100,000 bolts take about half of it.</summary>
    public const int Bytes = 10 * 1024 * 1024;

    /// <summary>Each part that is held in memory: the list of sheets, styles, shared strings.</summary>
    public const long HeldPart = 16 * 1024 * 1024;

    /// <summary>The sheet, which is read row by row.</summary>
    public const long Sheet = 64 * 1024 * 1024;

    /// <summary>Distinct texts.</summary>
    public const int SharedStrings = 500_000;
}
