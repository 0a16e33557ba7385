using System.Diagnostics;

namespace Kitwright.Optimise.Cutting;

/// <summary>Counts steps of work against a budget, and knows why a search must end.</summary>
/// <remarks>
/// A step is one cell of a knapsack table, one node of an enumeration (<see cref="StepsPerNode"/>), or what a linear
/// program does with one nonzero: all counted from sizes and iterations, never from the clock. A step is about one
/// nanosecond.
/// </remarks>
internal sealed class WorkMeter(WorkBudget budget, CancellationToken cancellation)
{
    public const int StepsPerNode = 20;

    private readonly long started = Stopwatch.GetTimestamp();
    private long limit = budget.Steps;

    /// <summary>Steps allowed in all.</summary>
    public long Budget => budget.Steps;

    public int Seed => budget.Seed;

    public long Done { get; private set; }

    public long Left => Math.Max(0, limit - Done);

    public CancellationToken Cancellation => cancellation;

    public TimeSpan UntilSafetyStop => budget.SafetyStop - Stopwatch.GetElapsedTime(started);

    public bool MustStop => Done >= limit || cancellation.IsCancellationRequested || UntilSafetyStop <= TimeSpan.Zero;

    public string StoppedBy =>
        cancellation.IsCancellationRequested ? "cancel"
        : UntilSafetyStop <= TimeSpan.Zero ? "clock"
        : Done >= budget.Steps ? "work-limit"
        : "done";

    public void Charge(long steps) => Done += steps;

    /// <summary>Holds what follows to a share of the budget; disposing gives the rest back.</summary>
    public IDisposable Share(double share) => ShareOf((long)(share * budget.Steps));

    /// <summary>Holds what follows to so many steps; disposing gives the rest back.</summary>
    public IDisposable ShareOf(long steps)
    {
        var whole = limit;
        limit = Math.Min(whole, Done + steps);
        return new Restore(() => limit = whole);
    }

    private sealed class Restore(Action restore) : IDisposable
    {
        public void Dispose() => restore();
    }
}
