using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.Cutting.Sheets;

/// <summary>
/// Leftovers as a separated text: the columns fabric, width (across the fabric), height (along it), count, and perhaps
/// from. What is written is read back the same, but for a name that begins like a formula.
/// </summary>
public static class OffcutFile
{
    private static readonly ImmutableArray<string> Required = ["fabric", "width", "height", "count"];
    private static readonly ImmutableArray<string> Optional = ["from"];

    /// <summary>A line that cannot be used is a finding. Never throws.</summary>
    public static Checked<OffcutList> Read(byte[] bytes)
    {
        var pieces = ImmutableArray.CreateBuilder<Offcut>();
        var findings = ListText.Read(
            bytes,
            ListMeasure.Inches,
            Required,
            Optional,
            cells =>
            {
                var fabric = cells.Text("fabric");
                if (fabric.Length is 0 or > 100)
                {
                    cells.Report("leftovers.unknown-fabric", ("fabric", fabric.Length == 0 ? "–" : fabric));
                    return;
                }

                if (cells.Measure("width", fabric) is { } width && cells.Measure("height", fabric) is { } height && cells.Count(fabric) is { } count)
                {
                    pieces.Add(new(fabric, width, height, count) { From = cells.Text("from") is { Length: > 0 } from ? from : null });
                }
            }
        );
        return new(findings.Any(f => f.Weight == Weight.Fault) ? null : new(pieces.ToImmutable()), findings);
    }

    /// <summary>In inches as fractions, for a table's program; lines end as in RFC 4180.</summary>
    public static string Write(IEnumerable<Offcut> pieces)
    {
        var text = new StringBuilder("fabric,width,height,count,from\r\n");
        foreach (var piece in pieces)
        {
            text.Append(CultureInfo.InvariantCulture, $"{Cell(piece.Fabric)},{LengthText.Inches(piece.Width)},{LengthText.Inches(piece.Height)},{piece.Count},{Cell(piece.From ?? "")}\r\n");
        }

        return text.ToString();
    }

    // A cell that a table's program would take for a formula gets an apostrophe before it, which is what such programs expect.
    private static string Cell(string text)
    {
        var safe = text.Length > 0 && "=+-@".Contains(text[0], StringComparison.Ordinal) ? "'" + text : text;
        return safe.AsSpan().IndexOfAny("\",;\r\n") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}

/// <summary>Pieces of cloth of a file; a count may be 0, which says that there is none of the size.</summary>
public sealed record OffcutList(ImmutableArray<Offcut> Pieces);
