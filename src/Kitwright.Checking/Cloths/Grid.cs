using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Checking.Exact;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>A cloth's demand in whole units.</summary>
/// <param name="Width">What a strip holds, in units.</param>
/// <param name="Ways">The ways to lay pieces that fit a strip, lowest first.</param>
/// <param name="Heights">Distinct heights of the ways, lowest first: a strip is as high as its highest piece.</param>
/// <param name="Area">Sum over the demand of count × width × height, in square units.</param>
/// <param name="Worth">Sum over the demand of count × dual.</param>
internal sealed record Grid(long Width, Way[] Ways, long[] Heights, BigInteger Area, BigInteger Worth)
{
    /// <summary>Null where the proof's figures cannot be what they should be.</summary>
    public static Grid? Of(ClothPlan cloth) => Of(cloth, cloth.Proof.Duals);

    /// <param name="duals">One per demand; empty where none are given.</param>
    public static Grid? Of(ClothPlan cloth, ImmutableArray<long> duals)
    {
        var proof = cloth.Proof;
        if (
            proof.Unit.Sign <= 0
            || proof.Scale <= 0
            || (!duals.IsEmpty && duals.Length != cloth.Demand.Length)
            || duals.Any(d => d < 0)
            || (!duals.IsEmpty && cloth.Terms.Stages != 2)
        )
        {
            return null;
        }

        var width = Whole((TermsRule.StripLength(cloth.Terms) / proof.Unit).Floor());
        var ways = new List<Way>();
        BigInteger area = 0,
            worth = 0;
        var given = SectionRules.Given(cloth);
        for (var i = 0; i < cloth.Demand.Length; i++)
        {
            var demand = cloth.Demand[i];
            if (demand.Count >= 0 && given.GetValueOrDefault(demand.Piece) is > 0 and var already)
            {
                // What sections give is not asked of the strips; a class that they give whole is no part of the bound.
                demand = demand with { Count = (int)Math.Max(0, demand.Count - already) };
                if (demand.Count == 0)
                {
                    continue;
                }
            }

            Rational w = demand.Width / proof.Unit,
                h = demand.Height / proof.Unit;
            if (!w.IsInteger || !h.IsInteger || w.Sign <= 0 || h.Sign <= 0 || demand.Count < 0)
            {
                return null;
            }

            var dual = duals.IsEmpty ? 0 : duals[i];
            area += w.Numerator * h.Numerator * demand.Count;
            worth += (BigInteger)dual * demand.Count;
            Add(ways, i, w, h, demand.Count, dual, width);
            if (demand.MayTurn && w != h)
            {
                Add(ways, i, h, w, demand.Count, dual, width);
            }
        }

        var sorted = ways.OrderBy(v => v.Height).ToArray();
        return new(width, sorted, [.. sorted.Select(v => v.Height).Distinct()], area, worth);
    }

    private static void Add(List<Way> ways, int demand, Rational w, Rational h, int count, long dual, long width)
    {
        if (count > 0 && w <= width)
        {
            ways.Add(new(demand, Whole(w.Numerator), Whole(h.Numerator), count, dual));
        }
    }

    private static long Whole(BigInteger x) => x <= 1_000_000_000_000 ? (long)x : throw new BeyondLimits();
}

/// <summary>One way to lay a piece: width along the strip, height, how many are wanted, and the dual of each.</summary>
/// <param name="Demand">Index of the demand.</param>
internal readonly record struct Way(int Demand, long Width, long Height, int Count, long Dual);
