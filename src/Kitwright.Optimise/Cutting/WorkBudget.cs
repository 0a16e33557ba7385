namespace Kitwright.Optimise.Cutting;

/// <summary>
/// How much may be spent on one plan, in steps of work, so that the same problem gives the same plan on a fast and on
/// a slow machine.
/// </summary>
/// <param name="Name">Stands in the plan: <c>while-you-type</c>, <c>normal</c>, <c>thorough</c>.</param>
/// <param name="Steps">About one nanosecond each on the machine where the limits were set; see <see cref="WorkMeter"/>.</param>
/// <param name="SafetyStop">The clock ends a search only here, and the plan then says so.</param>
public sealed record WorkBudget(string Name, long Steps, TimeSpan SafetyStop)
{
    /// <summary>Where chance decides, it begins here; equal seeds give equal plans.</summary>
    public int Seed { get; init; }

    public static WorkBudget WhileYouType { get; } = new("while-you-type", 100_000_000, TimeSpan.FromSeconds(1));
    public static WorkBudget Normal { get; } = new("normal", 2_000_000_000, TimeSpan.FromSeconds(20));
    public static WorkBudget Thorough { get; } = new("thorough", 20_000_000_000, TimeSpan.FromSeconds(120));

    /// <summary>About so many seconds of an idle core.</summary>
    public static WorkBudget OfSeconds(double seconds) =>
        new("seconds", (long)(seconds * 1e9), TimeSpan.FromSeconds(10 * Math.Max(1, seconds)));
}
