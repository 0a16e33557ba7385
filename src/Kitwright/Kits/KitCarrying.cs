using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>How many kits of one colorway the bolts carry when they are cut for nothing else.</summary>
public sealed class KitCarrying(Shelf shelf, KitTerms terms, IBoltSolver solver, CancellationToken cancel)
{
    /// <summary>More kits than this are never counted.</summary>
    public const int Most = 100_000;

    /// <summary>How many kits the bolts of one fabric carry, and how many at most.</summary>
    /// <remarks>Where a kit takes one length, floor((bolt − load loss) / length), summed over the bolts.</remarks>
    public (int Kits, int AtMost) Of(ImmutableArray<Bolt> bolts, KitCuts cuts)
    {
        var problem = new BoltProblem(
            bolts.IsEmpty ? "" : bolts[0].Fabric,
            bolts,
            [cuts with { Kits = 1 }],
            terms.LoadLoss,
            Length.Zero,
            AllocationAim.Count
        );
        var most = (int)Math.Min(Most, AllocationBounds.Kits(new(problem)));
        if (most == 0 || cuts.CutsPerKit == 1)
        {
            return (most, most);
        }

        var found = solver.Allocate(problem with { Kits = [cuts with { Kits = most }] }, null, cancel);
        var unmet = found.Goals[0].Bound.Ceiling();
        return (found.Figures.Served[0], most - (int)(unmet / cuts.CutsPerKit));
    }

    public LineOutcome Outcome(KitLine line, ImmutableSortedDictionary<string, KitCuts> cuts, int complete)
    {
        var carries = cuts.Select(c => Carry(c.Key, c.Value)).OrderBy(c => c.Letters[0], StringComparer.Ordinal).ToImmutableArray();
        var kits = carries.Min(c => c.Kits);
        return new(line.Colorway, line.PlanMark, line.Kits, complete, kits, carries.Min(c => c.AtMost), carries, Limit(carries, cuts, kits));
    }

    private FabricCarry Carry(string number, KitCuts cuts)
    {
        var (kits, atMost) = Of(shelf.BoltsOf(number), cuts);
        ImmutableArray<string> letters = [.. cuts.Sets.SelectMany(s => s.Cuts).OrderBy(c => c.Need).Select(c => c.Letter).Distinct()];
        return new(number, shelf.NameOf(number), letters, cuts.LengthPerKit, kits, atMost);
    }

    private KitLimit Limit(ImmutableArray<FabricCarry> carries, ImmutableSortedDictionary<string, KitCuts> cuts, int kits)
    {
        FabricCarry[] limiting = [.. carries.Where(c => c.Kits == kits)];
        var more = limiting.Min(c => Of(WithNewBolt(c.Fabric), cuts[c.Fabric]).Kits);
        var others = carries.Except(limiting).Select(c => c.Kits).Append(more).Min();
        return new([.. limiting.Select(c => new LimitingFabric(c.Fabric, c.Name, c.Letters, terms.PutUpOf(shelf, c.Fabric)))], others - kits);
    }

    private ImmutableArray<Bolt> WithNewBolt(string number) =>
        [.. shelf.BoltsOf(number), NewBolts.Of(number, terms.PutUpOf(shelf, number), 1)[0]];
}
