using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>Bolts that are not there yet, all of one lot.</summary>
public static class NewBolts
{
    private const string Lot = "(new)";

    public static ImmutableArray<Bolt> Of(string fabric, Length putUp, int count) =>
        [.. Enumerable.Range(1, count).Select(i => new Bolt($"(new {i})", fabric, Lot, putUp.RoundDownTo(Length.Ticks(1))))];
}
