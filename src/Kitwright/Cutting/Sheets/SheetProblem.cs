using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>What is to be cut from pieces of cloth that are there, before anything is decided.</summary>
/// <param name="Goal">What is made least, once as few pieces as possible are missing.</param>
public sealed record SheetProblem(
    SheetTerms Terms,
    ImmutableArray<StockSheet> Sheets,
    ImmutableArray<SheetDemand> Demand,
    SheetGoal Goal
);

/// <summary>What is made least.</summary>
public enum SheetGoal
{
    /// <summary>The cost of the cloths touched.</summary>
    Cost,

    /// <summary>How many cloths are touched; among equals, their area.</summary>
    FewestSheets,
}

/// <summary>Equal rectangles of cloth.</summary>
/// <param name="Id"><c>sheet/2</c>.</param>
/// <param name="Width">Across, selvage to selvage where there are selvages.</param>
/// <param name="Height">Down; null for one cloth of open length, which then is the only one.</param>
/// <param name="Count">How many there are; null for as many as one likes.</param>
/// <param name="Cost">Of one; of a cloth of open length, for one inch of it.</param>
public sealed record StockSheet(PathId Id, string Label, Length Width, Length? Height, int? Count, Rational Cost);

/// <summary>Equal pieces.</summary>
/// <param name="Width">Along the cloth's width when unturned.</param>
/// <param name="Sheets">The sheets that it may be cut from; empty where any will do.</param>
public sealed record SheetDemand(
    PathId Piece,
    string Label,
    Length Width,
    Length Height,
    int Count,
    bool MayTurn,
    ImmutableArray<PathId> Sheets
);

/// <summary>How sheets are cut: every cut goes from edge to edge.</summary>
/// <param name="Stages">
/// 2: strips, then pieces from the strips. 3: strips, sub-cuts across them, then pieces one above the other in a
/// sub-cut. A cut that brings a piece to size after the last stage is a trim and not counted as a stage.
/// </param>
/// <param name="TrimAcross">Taken once from each sheet's width.</param>
/// <param name="TrimAlong">Taken once from each sheet's height; of a cloth of open length, the straightening.</param>
/// <param name="Folds">
/// In how many layers a strip may be cut: 1, 2, 4. A strip in n layers is folded n times its width away: it holds 1/n
/// of the width, and every piece in it n times. Sheets are cut in one layer.
/// </param>
public sealed record SheetTerms(
    int Stages,
    FirstCut First,
    LastCut Last,
    Length TrimAcross,
    Length TrimAlong,
    ImmutableArray<int> Folds
)
{
    public static SheetTerms Usual { get; } = new(3, FirstCut.Either, LastCut.NonExact, Length.Zero, Length.Zero, [1]);
}

/// <summary>Which way the first cuts go.</summary>
public enum FirstCut
{
    /// <summary>Across the width: a strip is as long as the sheet is wide.</summary>
    Across,

    /// <summary>Down the height: a strip is as long as the sheet is high.</summary>
    Along,

    /// <summary>For each sheet whichever is better: the sheet may be turned on the table.</summary>
    Either,
}

/// <summary>What the cuts of the last stage may leave.</summary>
public enum LastCut
{
    /// <summary>A piece may be trimmed to size after the last stage.</summary>
    NonExact,

    /// <summary>The cuts of the last stage end in the pieces: nothing is trimmed.</summary>
    Exact,

    /// <summary>As exact, and what one last cut goes through holds pieces of one kind, all lying the same way.</summary>
    Homogeneous,
}
