using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>How large a quilt file may be: beyond these it is refused with a finding, before any work is done on it.</summary>
public static class QuiltLimits
{
    /// <summary>Characters of the file.</summary>
    public const int Text = 8_000_000;

    /// <summary>Levels of brackets.</summary>
    public const int Depth = 32;

    /// <summary>Characters of a name or a note.</summary>
    public const int Name = 200;
    public const int Note = 4_000;

    /// <summary>Characters of an id.</summary>
    public const int Id = 40;

    /// <summary>Greatest denominator of a length or of a part of a coordinate, and greatest part itself.</summary>
    public const int Denominator = 1_000_000;

    public const int Roles = 400;
    public const int Blocks = 1_000;
    public const int PatchesOfBlock = 1_000;
    public const int CornersOfPatch = 200;

    /// <summary>Corners of all patches of one block; exact checks take time with their square at worst.</summary>
    public const int CornersOfBlock = 4_000;

    /// <summary>Corners of all blocks of the file together.</summary>
    public const int Corners = 100_000;
    public const int CellsAcross = 200;
    public const int PlacedBlocks = 10_000;
    public const int Borders = 20;

    /// <summary>Units along one side of a border.</summary>
    public const int BorderUnits = 1_000;
    public const int Techniques = 10_000;

    /// <summary>Habits of pressing that a quilt overrules.</summary>
    public const int Habits = 100;
    public const int Colorways = 200;

    /// <summary>Findings of one file; the last one says that there are more.</summary>
    public const int Findings = 100;

    /// <summary>Either side of the finished quilt, and with it of any part.</summary>
    public static Length Side => Length.Inches(1_000);

    /// <summary>More of each size than anybody cuts in case one goes wrong.</summary>
    public const int SparePieces = 99;
}
