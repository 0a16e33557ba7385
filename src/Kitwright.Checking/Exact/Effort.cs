namespace Kitwright.Checking.Exact;

/// <summary>Counts the work done on one plan, so that a plan made to do harm ends in a finding and not in a wait.</summary>
internal sealed class Effort
{
    /// <summary>Steps; one looks at one face of cloth, or at one corner. A top of 100 by 100 squares takes 800,000.</summary>
    private const long Limit = 10_000_000;

    private long spent;

    /// <exception cref="BeyondLimits">The limit is reached.</exception>
    public void Spend(long steps)
    {
        spent += steps;
        if (spent > Limit)
        {
            throw new BeyondLimits();
        }
    }
}

/// <summary>The plan asks for more than the checker is willing to compute; caught where the rules are run.</summary>
internal sealed class BeyondLimits : Exception;
