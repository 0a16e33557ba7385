using System.Text.Json.Serialization;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Fabrics;

/// <summary>A fabric on the shelf, whatever bolts there are of it.</summary>
/// <param name="Number">The shop's stock number; unique.</param>
/// <param name="Width">Selvage to selvage.</param>
/// <param name="PricePerYard">In minor units of the shop's currency (cents).</param>
/// <param name="Color">Main color as sRGB, "#rrggbb".</param>
/// <param name="Print">How it is printed, and how the demo draws it.</param>
public sealed record Fabric(string Number, string Name, Length Width, long PricePerYard, string Color, Print Print)
{
    /// <summary>The length of a new bolt as its maker sells it; null where the shop's usual put-up is to be taken.</summary>
    /// <remarks>Put-ups vary from 8 to 25 yd between makers ([ITDQ], [CSQ], [CCLOUD]), so it is never assumed.</remarks>
    public Length? PutUp { get; init; }

    /// <summary>Which ways round the print may lie.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public PrintDirection Direction { get; init; }

    /// <summary>After which length along the selvage the print begins again; null where that does not matter.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? RepeatAlong { get; init; }

    /// <summary>After which length across the cloth the print begins again; null where that does not matter.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? RepeatAcross { get; init; }

    /// <summary>Length of one panel along the selvage; null where the cloth is not printed in panels.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? PanelLength { get; init; }

    /// <summary>Whether both sides are right sides, as of solids and woven stripes: a piece may lie on either.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool TwoSided { get; init; }
}

/// <summary>The kind of a print and the seed from which the project draws its own.</summary>
/// <param name="Second">A second color of the print, "#rrggbb".</param>
public sealed record Print(PrintKind Kind, string Second, int Seed);

public enum PrintKind
{
    Solid,
    Tonal,
    Dots,
    Stripe,
    Check,
    SmallFloral,
    LargeFloral,
}

/// <summary>One bolt, or the rest of one, as the stock file states it.</summary>
/// <param name="Id">Unique in the shop.</param>
/// <param name="Lot">Dye lot as free text; each receipt counts as a lot of its own where none is marked.</param>
/// <param name="OnHand">Length that is left.</param>
public sealed record Bolt(string Id, string Fabric, string Lot, Length OnHand);
