using Kitwright.Findings;
using Kitwright.Quilts.Reading;

namespace Kitwright.Quilts;

/// <summary>
/// The quilt file: JSON with <c>"format": "kitwright-quilt"</c>, described by docs/schema/quilt.v1.schema.json.
/// </summary>
/// <remarks>
/// Lengths are text with a unit ("3 7/8 in", "95 mm", "9.5 cm"); a bare number is in the file's units. Coordinates are
/// text in the file's units, exact in roots ("3 1/2", "6√2"). Write and Read are inverse to each other.
/// </remarks>
public static class QuiltFile
{
    public const string Format = "kitwright-quilt";
    public const int Version = 1;

    /// <summary>
    /// Reads a quilt and checks it. Never throws for what a file holds: each fault is a finding whose place is a JSON
    /// pointer, or a line where the text is not JSON. Time and memory are bounded by <see cref="QuiltLimits"/>.
    /// </summary>
    public static Checked<Quilt> Read(string json)
    {
        var source = new Source();
        var report = source.Report;
        using var document = JsonText.Parse(json, report);
        if (document is null)
        {
            return Checked<Quilt>.Failed(report.ToImmutable());
        }

        var quilt = QuiltReader.Read(new Node(document.RootElement, "", source));
        if (!report.HasFault)
        {
            QuiltRules.Check(quilt, report);
        }

        return new(report.HasFault ? null : quilt, report.ToImmutable());
    }

    /// <summary>The quilt as text that <see cref="Read"/> takes back to an equal quilt.</summary>
    public static string Write(Quilt quilt) => Writing.QuiltWriter.Write(quilt);
}
