namespace Kitwright.WorkTimes;

/// <summary>What is added to normal time so that people can keep it up: the rules of work study.</summary>
/// <param name="Personal">Share of the time at work for personal needs: 5 % as a rule, 24 minutes in 480 ([KONZ]).</param>
/// <param name="Fatigue">Share of the work for rest: 10 % on every job is the textbooks' base ([SLACK]).</param>
/// <remarks>
/// A share of the work multiplies: × (1 + allowance). A share of the shift divides: ÷ (1 − allowance) ([KONZ], [KONZ2]).
/// </remarks>
public sealed record Allowances(double Personal, double Fatigue)
{
    public static Allowances Usual { get; } = new(0.05, 0.10);

    /// <summary>From normal to standard time.</summary>
    public double Standard(double normal) => normal * (1 + Fatigue) / (1 - Personal);
}
