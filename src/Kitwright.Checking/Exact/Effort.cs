namespace Kitwright.Checking.Exact;

/// <summary>Counts the work done on one plan, so that a plan made to do harm ends in a finding and not in a wait.</summary>
/// <param name="limit">Steps; one step looks at one face of cloth, or at one corner.</param>
internal sealed class Effort(long limit)
{
    /// <summary>A top of 10,000 patches takes under a tenth of it.</summary>
    public const long Usual = 20_000_000;

    private long spent;

    /// <exception cref="BeyondLimits">The limit is reached.</exception>
    public void Spend(long steps)
    {
        spent += steps;
        if (spent > limit)
        {
            throw new BeyondLimits();
        }
    }
}

/// <summary>The plan asks for more than the checker is willing to compute; caught where the rules are run.</summary>
internal sealed class BeyondLimits : Exception;
