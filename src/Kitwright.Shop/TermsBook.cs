using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop;

/// <summary>The shop's terms: usual ones until they are set.</summary>
public sealed class TermsBook
{
    private readonly ShopStore store;

    internal TermsBook(ShopStore store) => this.store = store;

    public async Task<ShopTerms> Read(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await context.Terms.AsNoTracking().SingleOrDefaultAsync(cancel) is { } row ? Read(row) : ShopTerms.Usual;
    }

    /// <summary>Sets the terms, or says what is wrong with them.</summary>
    public Task<Checked<ShopTerms>> Set(ShopTerms terms, CancellationToken cancel = default) =>
        store.TryWrite(
            async context =>
            {
                var findings = ShopTermsRules.Findings(terms);
                if (!findings.IsEmpty)
                {
                    return Checked<ShopTerms>.Failed(findings);
                }

                var held = await context.Terms.SingleOrDefaultAsync(cancel);
                var row = Write(terms);
                if (held is null)
                {
                    context.Terms.Add(row);
                }
                else
                {
                    context.Entry(held).CurrentValues.SetValues(row);
                }

                return Checked<ShopTerms>.Of(terms);
            },
            cancel
        );

    private static ShopTerms Read(TermsRow row) =>
        new(
            new(
                Length.Ticks(row.UsableWidthTicks),
                Length.Ticks(row.CrossTrimTicks),
                Length.Ticks(row.StraighteningTicks),
                row.Stages,
                [.. row.IncrementTicks.Select(Length.Ticks)],
                Length.Ticks(row.MinimumCutTicks)
            )
            {
                Table = Table(row),
            },
            row.SpareStrips,
            row.OneLengthPerFabric,
            new(Length.Ticks(row.LoadLossTicks), Length.Ticks(row.UsefulRemnantTicks), Length.Ticks(row.PutUpTicks)),
            row.Currency
        )
        {
            SoldBy = row.SoldBy,
            Words = row.Words,
            Techniques = row
                .Techniques.Select(text => text.Split('='))
                .Where(word => word.Length == 2)
                .ToImmutableSortedDictionary(word => word[0], word => word[1], StringComparer.Ordinal),
            Goal = row.Goal,
            Order = Order(row.Aims),
            LeastLeftover = Length.Ticks(row.LeastLeftoverTicks),
        };

    private static TableTerms? Table(TermsRow row) =>
        row is { Layers: 1, SquareEvery: 0, RulerLengthTicks: null }
            ? null
            : new(row.Layers, row.SquareEvery, Length.Ticks(row.SquaringLossTicks))
            {
                RulerLength = row.RulerLengthTicks is { } ruler ? Length.Ticks(ruler) : TableTerms.Usual.RulerLength,
            };

    private static ImmutableArray<CutAim> Order(string aims)
    {
        ImmutableArray<CutAim> order = [.. aims.Split(' ').SelectMany(aim => Enum.TryParse<CutAim>(aim, out var known) ? [known] : Array.Empty<CutAim>())];
        return CutOrder.IsWhole(order) && !order.SequenceEqual(CutOrder.Usual) ? order : CutOrder.Usual;
    }

    private static TermsRow Write(ShopTerms terms) =>
        new()
        {
            UsableWidthTicks = terms.Cloth.UsableWidth.InTicks(),
            CrossTrimTicks = terms.Cloth.CrossTrim.InTicks(),
            StraighteningTicks = terms.Cloth.Straightening.InTicks(),
            Stages = terms.Cloth.Stages,
            IncrementTicks = [.. terms.Cloth.Increments.Select(i => i.InTicks())],
            MinimumCutTicks = terms.Cloth.MinimumCut.InTicks(),
            SpareStrips = terms.SpareStrips,
            OneLengthPerFabric = terms.OneLengthPerFabric,
            LoadLossTicks = terms.Kits.LoadLoss.InTicks(),
            UsefulRemnantTicks = terms.Kits.UsefulRemnant.InTicks(),
            PutUpTicks = terms.Kits.PutUp.InTicks(),
            Currency = terms.Currency,
            SoldBy = terms.SoldBy,
            Words = terms.Words,
            Techniques = [.. terms.Techniques.Select(word => $"{word.Key}={word.Value}")],
            Goal = terms.Goal,
            Aims = string.Join(' ', terms.Order),
            Layers = (terms.Cloth.Table ?? TableTerms.Usual).Layers,
            SquareEvery = (terms.Cloth.Table ?? TableTerms.Usual).SquareEvery,
            SquaringLossTicks = (terms.Cloth.Table ?? TableTerms.Usual).SquaringLoss.InTicks(),
            RulerLengthTicks = terms.Cloth.Table?.RulerLength.InTicks(),
            LeastLeftoverTicks = terms.LeastLeftover.InTicks(),
        };
}
