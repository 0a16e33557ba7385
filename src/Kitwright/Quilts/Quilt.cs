using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>A quilt as its file states it, read and valid in itself; sizes are finished unless the name says cut.</summary>
/// <param name="Units">The units that people see: inch or centimeter.</param>
/// <param name="Seam">Seam allowance, 1/4 in as a rule.</param>
/// <param name="RulerStep">Cut sizes are multiples of it, 1/8 in as a rule.</param>
/// <param name="Licensed">Set where the pattern is somebody else's; null for one's own.</param>
/// <param name="Techniques">Technique by unit kind or patch path, where the default is overruled.</param>
public sealed record Quilt(
    string Name,
    string? Note,
    LengthUnit Units,
    Length Seam,
    Length RulerStep,
    License? Licensed,
    ImmutableArray<Role> Roles,
    ImmutableArray<Block> Blocks,
    Setting Setting,
    ImmutableArray<Border> Borders,
    Binding Binding,
    Backing Backing,
    ImmutableSortedDictionary<string, string> Techniques,
    ImmutableArray<Colorway> Colorways
)
{
    /// <summary>How seams are pressed, by habit, where the usual one is overruled; null for none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableSortedDictionary<string, string>? Pressing { get; init; }

    /// <summary>Where prints that have an up stand upright.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public PrintSetting Prints { get; init; }

    public Colorway? Colorway(string name) =>
        Colorways.FirstOrDefault(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase));
}

/// <summary>What one fabric does in the quilt.</summary>
/// <param name="Value">Where it stands between light and dark, as the designer wants it; null where it does not matter.</param>
public sealed record Role(string Id, string Name, Value? Value)
{
    /// <summary>Whether each of its pieces is to show the same part of the print, where its fabric has a repeat.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Matched { get; init; }

    /// <summary>How many more of each size are cut than are sewn.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public int Spare { get; init; }
}

public enum Value
{
    Light,
    Medium,
    Dark,
}

/// <summary>What the owner of a pattern allows.</summary>
public sealed record License(string Owner, bool Kits, bool PreCut, bool Resize, bool ShowDrawing, bool Split)
{
    /// <summary>
    /// Lengths for one kit by role, as the bought pattern states them; kits are made from these where there are any.
    /// </summary>
    public ImmutableSortedDictionary<string, Length> Lengths { get; init; } = ImmutableSortedDictionary<string, Length>.Empty;
}

/// <summary>A block by its patches, drawn on a grid.</summary>
/// <param name="Grid">Divisions across and down, for drawing; patches need not lie on it.</param>
public sealed record Block(string Id, string Name, Length Width, Length Height, Grid Grid, ImmutableArray<BlockPatch> Patches);

public readonly record struct Grid(int Columns, int Rows);

/// <summary>
/// One patch of a block: its corners in finished inches from the block's lower left corner, and the edges that are
/// arcs rather than straight.
/// </summary>
public sealed record BlockPatch(string Id, string Role, ImmutableArray<Point> Corners, ImmutableArray<Arc> Arcs);

/// <summary>The edge from corner <paramref name="Edge"/> to the next as an arc about an exact center.</summary>
public sealed record Arc(int Edge, Point Center, bool Clockwise);

/// <summary>How the blocks are laid.</summary>
/// <param name="Cells">
/// The repeat, top row first; cell (r, c) of the quilt takes <c>Cells[r mod rows][c mod columns]</c>. On point, long
/// and short rows count alike.
/// </param>
/// <param name="Triangles">The role of the setting triangles of blocks on point; null for a straight setting.</param>
public sealed record Setting(
    SettingKind Kind,
    int Columns,
    int Rows,
    ImmutableArray<ImmutableArray<Cell>> Cells,
    Sashing? Sashing,
    string? Triangles = null
)
{
    /// <summary>
    /// The role that fills both ends of every other column, which is dropped by half a block and holds one block fewer;
    /// null where no column is dropped.
    /// </summary>
    public string? HalfDrop { get; init; }
}

public enum SettingKind
{
    Straight,
    OnPoint,
}

/// <summary>One cell of the repeat: which block, turned how many quarters counterclockwise, mirrored left to right first.</summary>
public readonly record struct Cell(string Block, int Turns, bool Mirror);

/// <summary>Strips between the blocks.</summary>
/// <param name="Cornerstone">The role of the squares where sashes meet; null for none (rows joined by long sashes).</param>
/// <param name="Outer">Whether sashing also runs round the outside.</param>
/// <param name="Halved">On point, with sashing all round: the quilt's edge halves the outermost cornerstones.</param>
public sealed record Sashing(Length Width, string Role, string? Cornerstone, bool Outer, bool Halved = false)
{
    public SashLines Lines { get; init; }
}

public enum SashLines
{
    /// <summary>Between rows and columns.</summary>
    Both,

    /// <summary>Between columns only: blocks of a column meet, and the strips run the whole height.</summary>
    Columns,

    /// <summary>Between rows only.</summary>
    Rows,
}

/// <summary>One border, from the inside out.</summary>
/// <param name="Role">Of its strips; of a border pieced from units, of the coping strips inside it.</param>
/// <param name="Corner">The role of corner squares; null where there are none, or units for them.</param>
public sealed record Border(Length Width, string Role, BorderStyle Style, string? Corner, StripGrain Grain)
{
    /// <summary>What the border is pieced from; null for a plain one.</summary>
    public BorderUnits? Units { get; init; }
}

/// <summary>
/// A run of units along each side of a border: a block of the quilt, brought in proportion to the border's width, its
/// lower edge toward the center.
/// </summary>
/// <param name="Turns">Quarter turns counterclockwise before it is laid along the upper side.</param>
/// <param name="Corner">The square block that lies in the corners; null where the top and bottom runs reach into them, or for corner squares.</param>
/// <param name="Coping">Whether plain strips inside the border may make up the length that whole units need.</param>
/// <param name="Across">Units along the top and along the bottom; null for the fewest that come out.</param>
/// <param name="Down">Units along either side.</param>
/// <param name="FromMiddle">Units beyond the middle of a side are mirror images.</param>
public sealed record BorderUnits(string Block, int Turns, string? Corner, bool Coping, int? Across, int? Down, bool FromMiddle)
{
    /// <summary>Another block, of the same proportions, that every second unit of a run is; null where all are alike.</summary>
    public string? Alternate { get; init; }
}

public enum BorderStyle
{
    /// <summary>Sides first, then top and bottom across them.</summary>
    Butted,
    CornerSquares,
    Mitered,
}

public enum StripGrain
{
    /// <summary>Strips across the width of fabric, joined to length.</summary>
    Crosswise,

    /// <summary>Cut along the selvage in one piece.</summary>
    Lengthwise,
    Bias,
}

/// <summary>Double-fold binding.</summary>
/// <param name="StripWidth">Cut width of the strip.</param>
/// <param name="Allowance">Added to the perimeter for corners and closing.</param>
public sealed record Binding(string Role, Length StripWidth, Length Allowance, StripGrain Grain);

/// <summary>Backing and batting.</summary>
/// <param name="Overhang">Beyond the top on each side, for backing and batting alike.</param>
/// <param name="Seam">Allowance of the seams between panels, selvages off.</param>
/// <param name="Seams">Where the panels' seams run; null lets the planner take the shorter purchase.</param>
public sealed record Backing(string Role, Length Overhang, Length Seam, PanelSeams? Seams);

public enum PanelSeams
{
    Down,
    Across,
}

/// <summary>One choice of stock fabrics: fabric numbers by role.</summary>
public sealed record Colorway(string Name, ImmutableSortedDictionary<string, string> Fabrics);
