using System.Collections.Immutable;

namespace Kitwright.Settings;

/// <summary>The different ways in which one block can lie in a cell, and what a position of the whole does to them.</summary>
/// <remarks>
/// Positions that differ by a symmetry of the block look alike, so looks are cosets of the block's own group. Cloth
/// cannot be turned over: without mirrored blocks the looks are those that quarter-turns give, and a mirror of the
/// whole setting counts only where it takes each of these looks to another of them.
/// </remarks>
public sealed class Looks
{
    private readonly Dictionary<Position, int> index = [];

    private Looks(ImmutableArray<Position> each, ImmutableArray<Position> symmetry)
    {
        Each = each;
        for (var look = 0; look < each.Length; look++)
        {
            foreach (var own in symmetry)
            {
                index[own.Then(each[look])] = look;
            }
        }

        Movers = [.. Position.All.Where(mover => each.All(look => index.ContainsKey(look.Then(mover))))];
    }

    /// <summary>One position for each look; the first is the identity.</summary>
    public ImmutableArray<Position> Each { get; }

    public int Count => Each.Length;

    /// <summary>The turns, and mirrors where there are such, of the whole setting that look takes to look.</summary>
    public ImmutableArray<Position> Movers { get; }

    /// <param name="symmetry">The block's own, as <see cref="BlockSymmetry"/> finds it.</param>
    /// <param name="mirrored">Whether blocks sewn as mirror images may be used too.</param>
    public static Looks Of(ImmutableArray<Position> symmetry, bool mirrored)
    {
        var each = ImmutableArray.CreateBuilder<Position>();
        var seen = new HashSet<Position>();
        foreach (var position in Position.All.Where(p => mirrored || !p.Mirror).Where(p => !seen.Contains(p)))
        {
            each.Add(position);
            seen.UnionWith(symmetry.Select(own => own.Then(position)));
        }

        return new(each.ToImmutable(), symmetry);
    }

    /// <summary>Which look a position gives; −1 where only a mirrored block has it.</summary>
    public int Of(Position position) => index.GetValueOrDefault(position, -1);

    /// <summary>What a look becomes when the whole setting is moved.</summary>
    public int Moved(int look, Position mover) => index[Each[look].Then(mover)];
}
