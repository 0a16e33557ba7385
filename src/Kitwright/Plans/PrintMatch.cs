using System.Text.Json.Serialization;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>
/// The repeats of a print to which pieces are matched, so that each shows the same part of it. A piece is cut from a room
/// of whole repeats each way in which there is one, and rooms begin at whole repeats from the first.
/// </summary>
public sealed record PrintMatch
{
    /// <summary>Repeat along the selvage; null where the print does not repeat that way.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Along { get; init; }

    /// <summary>Repeat across the cloth; null likewise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Across { get; init; }
}
