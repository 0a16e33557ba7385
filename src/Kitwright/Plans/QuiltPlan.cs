using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>The whole plan of one quilt in one colorway (or none): a document that stands alone and can be checked.</summary>
/// <param name="Quilt">The quilt's name.</param>
/// <param name="Colorway">The colorway's name, or null.</param>
/// <param name="Mark">Short mark printed on everything that comes from this plan.</param>
/// <param name="Hash">SHA-256, hexadecimal, of the problem, the engine's version and the budget.</param>
/// <param name="Engine">The engine's version.</param>
/// <param name="Budget">The work limit's name.</param>
/// <param name="Seam">Seam allowance.</param>
/// <param name="RulerStep">Cut sizes are multiples of it; an unrounded unit may exceed its size by at most this.</param>
/// <param name="Fabrics">Letters, in the order of the swatch key.</param>
public sealed record QuiltPlan(
    string Quilt,
    string? Colorway,
    string Mark,
    string Hash,
    string Engine,
    string Budget,
    Length Seam,
    Length RulerStep,
    ImmutableArray<PlanFabric> Fabrics,
    Design Design,
    ImmutableArray<CutPiece> Pieces,
    ImmutableArray<ClothPlan> Cloths,
    SewingPlan Sewing,
    BindingPlan Binding,
    BackingPlan Backing,
    Needs Needs
)
{
    /// <summary>Where directional prints stand upright.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public PrintSetting Prints { get; init; }

    public const string Format = "kitwright-plan";
    public const int Version = 1;
}

/// <summary>One letter of the swatch key: the roles that share one length, and the stock fabric that fills them.</summary>
public sealed record PlanFabric(string Letter, ImmutableArray<string> Roles, string? Number, string Name, string Color)
{
    /// <summary>Which ways round its print may lie.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public PrintDirection Direction { get; init; }

    /// <summary>The repeats to which its pieces are matched; null where they show whatever comes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PrintMatch? Match { get; init; }

    /// <summary>Whether either side of the cloth may be the right one: pieces of it have no hand.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool TwoSided { get; init; }

    /// <summary>Length of one printed panel along the cloth; null where it is not printed in panels.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? PanelLength { get; init; }
}

/// <summary>Double-fold binding: strips joined on the diagonal into one.</summary>
/// <param name="Perimeter">Of the finished top.</param>
/// <param name="Allowance">Added for corners and closing.</param>
/// <param name="StripWidth">Cut width.</param>
/// <param name="Strips">How many strips; each diagonal join takes one strip width.</param>
/// <param name="Piece">The piece class of a strip.</param>
public sealed record BindingPlan(Length Perimeter, Length Allowance, Length StripWidth, int Strips, PathId Piece)
{
    public Length Wanted => Perimeter + Allowance;

    /// <summary>
    /// Across or along the cloth; on the bias the pieces are squares, each made into one continuous strip, and
    /// <see cref="Strips"/> counts them.
    /// </summary>
    public CutGrain Grain { get; init; } = CutGrain.Crosswise;

    /// <summary>How often the strip of one bias square goes round its tube; 0 for straight strips.</summary>
    public int Rounds { get; init; }
}

/// <summary>Backing and batting sizes, and the panels of the backing.</summary>
/// <param name="Overhang">Beyond the top on each side.</param>
/// <param name="Panels">Widths of cloth side by side.</param>
/// <param name="Across">True where the seams run across the quilt, side to side.</param>
/// <param name="PanelLength">Each panel's length along its cloth.</param>
/// <param name="Seam">Seam allowance between panels, selvages removed first.</param>
public sealed record BackingPlan(
    Length Overhang,
    Length Width,
    Length Height,
    int Panels,
    bool Across,
    Length UsableWidth,
    Length PanelLength,
    Length Seam,
    Length Purchase
)
{
    /// <summary>
    /// Whether one panel is cut in two along its length and a half is sewn to each side, so that no seam runs through
    /// the middle.
    /// </summary>
    public bool HalvesOutside { get; init; }

    public int Seams => HalvesOutside ? Panels : Panels - 1;
}

/// <summary>The checker's answer to "where does this patch come from?": one link per patch and piece that shows in it.</summary>
/// <param name="Recipe">The recipe that first sews the piece in.</param>
public sealed record TraceLink(PathId Patch, PathId Piece, PathId Recipe);

/// <summary>All links of a checked plan.</summary>
public sealed record Trace(ImmutableArray<TraceLink> Links)
{
    public static Trace None { get; } = new([]);
}
