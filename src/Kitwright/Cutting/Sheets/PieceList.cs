using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Stock;

namespace Kitwright.Cutting.Sheets;

/// <summary>Pieces to be cut, as somebody lists them.</summary>
public sealed record PieceList(ImmutableArray<ListedPiece> Pieces)
{
    private static readonly ImmutableArray<string> Required = ["label", "width", "height", "count"];
    private static readonly ImmutableArray<string> Optional = ["turn", "cloth", "match"];

    /// <summary>
    /// The list of a separated text with the columns label, width, height and count, and perhaps turn, cloth and match. A
    /// line that cannot be used is a finding, and the others are still there; null only where no line can be read.
    /// Never throws.
    /// </summary>
    /// <param name="mayTurn">Whether pieces may be turned where their line does not say.</param>
    public static Checked<PieceList> Read(byte[] bytes, ListMeasure measure, bool mayTurn)
    {
        var pieces = ImmutableArray.CreateBuilder<ListedPiece>();
        bool? metric = null;
        var findings = ListText.Read(
            bytes,
            measure,
            Required,
            Optional,
            cells =>
            {
                if (cells.Label() is not { } label)
                {
                    return;
                }

                var (width, height) = (cells.Measure("width", label), cells.Measure("height", label));
                var (count, turn) = (cells.Count(label), cells.Turn(label, mayTurn));
                var match = cells.Match(label);
                if (width is null || height is null || count is null || turn is null || match is null)
                {
                    return;
                }

                // The units of the first line are those of the list: one line in the other kind is a slip.
                var isMetric = cells.IsMetric("width");
                if (cells.IsMetric("height") != isMetric || isMetric != (metric ??= isMetric))
                {
                    cells.Report("cutlist.mixed-units", ("label", label), ("width", cells.Text("width")), ("height", cells.Text("height")));
                    return;
                }

                var cloths = cells.Text("cloth").Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                pieces.Add(new(cells.Line, label, width.Value, height.Value, count.Value, turn.Value, [.. cloths]) { Matched = match.Value });
            }
        );
        return new(pieces.Count == 0 ? null : new(pieces.ToImmutable()), findings);
    }
}

/// <summary>One line of a list of pieces.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Width">Cut size, along the width of the cloth when unturned.</param>
/// <param name="Height">Cut size, along the length of the cloth when unturned.</param>
/// <param name="Cloths">The cloths that it may be cut from, by name; empty where any will do.</param>
public sealed record ListedPiece(
    int Line,
    string Label,
    Length Width,
    Length Height,
    int Count,
    bool MayTurn,
    ImmutableArray<string> Cloths
)
{
    /// <summary>Whether it is to show the same part of the print as others of its kind.</summary>
    public bool Matched { get; init; }
}
