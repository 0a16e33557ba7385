using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Fabrics;
using Kitwright.Measure;

namespace Kitwright.Shop.Ledger;

/// <summary>What taking over a stock file does, or would do.</summary>
/// <param name="DryRun">True where nothing was saved.</param>
/// <param name="Again">True where this import had been made before.</param>
/// <param name="Received">Bolts that the shop did not have.</param>
/// <param name="Counted">Bolts whose length on record differs from the file: the file counts as a count.</param>
/// <param name="NotInFile">Bolts on record that the file leaves out; they stay as they are.</param>
public sealed record StockImport(
    bool DryRun,
    bool Again,
    ImmutableArray<Fabric> NewFabrics,
    ImmutableArray<FabricChange> ChangedFabrics,
    ImmutableArray<Bolt> Received,
    ImmutableArray<BoltCount> Counted,
    ImmutableArray<string> NotInFile
)
{
    /// <summary>What a shop without any stock would take over.</summary>
    public static StockImport IntoEmpty(Shelf shelf) => new(true, false, shelf.Fabrics, [], shelf.Bolts, [], []);

    /// <summary>True where the shop has all of it already.</summary>
    [JsonIgnore]
    public bool ChangesNothing => NewFabrics.IsEmpty && ChangedFabrics.IsEmpty && Received.IsEmpty && Counted.IsEmpty;
}

public sealed record FabricChange(Fabric Before, Fabric After);

/// <summary>A bolt as it was on record and as it was measured.</summary>
public sealed record BoltCount(string Bolt, Length OnRecord, Length Measured);
