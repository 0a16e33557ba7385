using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>Findings up to a number that a person still reads; the rest are counted.</summary>
internal sealed class FindingList
{
    public const int Limit = 100;

    private readonly ImmutableArray<Finding>.Builder kept = ImmutableArray.CreateBuilder<Finding>();
    private int dropped;

    public bool HasFaults { get; private set; }

    public void Add(Finding finding)
    {
        HasFaults |= finding.Weight == Weight.Fault;
        if (kept.Count < Limit)
        {
            kept.Add(finding);
        }
        else
        {
            dropped++;
        }
    }

    /// <summary>What concerns the whole file stands first, however much else is wrong.</summary>
    public void AddFirst(Finding finding)
    {
        HasFaults |= finding.Weight == Weight.Fault;
        kept.Insert(0, finding);
    }

    public void AddRange(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            Add(finding);
        }
    }

    public ImmutableArray<Finding> ToImmutable() =>
        dropped == 0
            ? kept.ToImmutable()
            : [.. kept, Finding.NoteOf("stock.more-findings", "file", ("count", dropped))];
}
