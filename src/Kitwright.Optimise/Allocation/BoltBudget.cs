namespace Kitwright.Optimise.Allocation;

/// <summary>How long an allocation of one fabric is searched for.</summary>
/// <param name="Work">Deterministic time of the solver, in its own units (about seconds), over all goals.</param>
/// <param name="Clock">A safety stop only: it is reported, and the outcome then depends on the machine.</param>
public sealed record BoltBudget(double Work, TimeSpan Clock)
{
    /// <summary>While somebody waits for a page.</summary>
    public static BoltBudget Typing { get; } = new(0.1, TimeSpan.FromSeconds(2));

    /// <summary>For a plan that is going to be cut.</summary>
    public static BoltBudget Planning { get; } = new(2, TimeSpan.FromSeconds(30));
}
