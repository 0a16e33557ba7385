using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Cutting.Sheets;

/// <summary>A problem of sheets in whole units: what every method works on, so that no rounding decides what fits.</summary>
/// <param name="Unit">Every piece is a whole number of these; sheets are rounded down.</param>
/// <param name="CostUnit">Every cost is a whole number of these.</param>
public sealed record SheetGrid(
    Length Unit,
    Rational CostUnit,
    SheetTerms Terms,
    ImmutableArray<GridSheet> Sheets,
    ImmutableArray<GridRectangle> Pieces
)
{
    public ImmutableArray<int> Counts { get; } = [.. Pieces.Select(piece => piece.Count)];

    /// <summary>The cloth of open length, if that is what is cut.</summary>
    public bool IsOpen => Sheets is [{ Height: null }];

    public long CostOf(SheetPattern pattern) =>
        IsOpen ? pattern.Height * Sheets[0].Cost : Sheets[pattern.Sheet].Cost;

    /// <summary>
    /// What a missing piece counts: more than the dearest sheet, so that a sheet is always rather touched; more for a
    /// large piece.
    /// </summary>
    public long PenaltyOf(int piece)
    {
        var most = Sheets.Max(sheet => sheet.Cost) * (IsOpen ? Pieces.Max(p => Math.Max(p.Width, p.Height)) : 1L);
        return (2 * most) + (long)((Int128)most * Pieces[piece].Area / Pieces.Max(p => p.Area));
    }
}

/// <summary>A sheet in units, trims taken off.</summary>
/// <param name="Height">Null for open length.</param>
/// <param name="Count">Null for as many as one likes.</param>
/// <param name="Cost">In cost units; of open length, for one unit of length.</param>
public sealed record GridSheet(int Width, int? Height, int? Count, long Cost)
{
    public long Area => (long)Width * (Height ?? 1);
}

/// <summary>A piece in units.</summary>
/// <param name="Demand">The demand that asks for it, as an index.</param>
/// <param name="Sheets">The sheets that may hold it, as indices.</param>
public sealed record GridRectangle(int Width, int Height, int Count, bool MayTurn, int Demand, ImmutableArray<int> Sheets)
{
    public long Area => (long)Width * Height;
}
