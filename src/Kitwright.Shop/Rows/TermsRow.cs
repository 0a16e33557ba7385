using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Shop.Rows;

/// <summary>The shop's terms; one row. Lengths in ticks.</summary>
public sealed class TermsRow
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;
    public required long UsableWidthTicks { get; set; }
    public required long CrossTrimTicks { get; set; }
    public required long StraighteningTicks { get; set; }
    public required int Stages { get; set; }
    public required List<long> IncrementTicks { get; set; }
    public required long MinimumCutTicks { get; set; }
    public required int SpareStrips { get; set; }
    public required bool OneLengthPerFabric { get; set; }
    public required long LoadLossTicks { get; set; }
    public required long UsefulRemnantTicks { get; set; }
    public required long PutUpTicks { get; set; }
    public required string Currency { get; set; }
    public required LengthUnit SoldBy { get; set; }
    public required TradeWords Words { get; set; }

    /// <summary>Kind of unit and technique: <c>half-square=eight</c>.</summary>
    public required List<string> Techniques { get; set; }

    public required CutGoal Goal { get; set; }

    /// <summary>Names of the aims, a space between.</summary>
    public required string Aims { get; set; }

    public required int Layers { get; set; }

    /// <summary>0 for never.</summary>
    public required int SquareEvery { get; set; }

    public required long SquaringLossTicks { get; set; }

    /// <summary>Null where nothing is said of the table, and in rows older than this column.</summary>
    public required long? RulerLengthTicks { get; set; }

    public required long LeastLeftoverTicks { get; set; }
}
