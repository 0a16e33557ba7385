using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// A problem that has been looked through: what can be planned, in whole units, and findings about what can not.
/// </summary>
/// <param name="Problem">The problem with the demands that can be planned, in their order.</param>
/// <param name="Grid">Null where nothing can be planned.</param>
public sealed record ClothIntake(ClothProblem Problem, StripGrid? Grid, ImmutableArray<Finding> Findings)
{
    /// <summary>Above this one class is taken for a slip of the pen.</summary>
    public const int MostOfOneClass = 1_000_000;

    /// <summary>Above this a problem is no quilt's, and time and memory would not be bounded.</summary>
    public const long MostPieces = 10_000_000;

    public const int MostClasses = 10_000;

    /// <summary>100 yd: longer than a piece can be on any roll that a shop holds.</summary>
    public static readonly Length LongestPiece = Length.Yards(100);

    // 100 in at the finest step that inches and millimeters share (1/8128 in) is 812,800 units.
    private const int MostUnits = 1 << 22;

    public static ClothIntake Of(ClothProblem problem)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(OfTerms(problem));
        if (findings.Count > 0)
        {
            return new(problem, null, findings.ToImmutable());
        }

        var kept = ImmutableArray.CreateBuilder<ClothDemand>();
        var total = 0L;
        foreach (var demand in problem.Demand)
        {
            var finding =
                OfDemand(demand, problem.Terms.StripLength)
                ?? (
                    kept.Count >= MostClasses || total + demand.Count > MostPieces
                        ? Finding.Of("cutting.too-much", demand.Piece.Value, ("label", demand.Label), ("classes", MostClasses), ("pieces", MostPieces))
                        : null
                );
            if (finding is null)
            {
                kept.Add(demand);
                total += demand.Count;
            }
            else
            {
                findings.Add(finding);
            }
        }

        problem = problem with { Demand = kept.ToImmutable() };
        if (kept.Count == 0 && findings.Count > 0)
        {
            return new(problem, null, findings.ToImmutable());
        }

        var grid = ToGrid(problem);
        if (grid is null)
        {
            findings.Add(Finding.Of("cutting.grid", problem.Id.Value));
        }

        return new(problem, grid, findings.ToImmutable());
    }

    private static IEnumerable<Finding> OfTerms(ClothProblem problem)
    {
        var terms = problem.Terms;
        var place = problem.Id.Value;
        if (terms.StripLength.Sign <= 0 || terms.CrossTrim.Sign < 0)
        {
            yield return Finding.Of("cutting.no-width", place, ("width", terms.UsableWidth), ("trim", terms.CrossTrim));
        }

        if (terms.Straightening.Sign < 0)
        {
            yield return Finding.Of("cutting.straightening", place, ("straightening", terms.Straightening));
        }

        if (terms.Table is { } table && (table.Layers is not (1 or 2 or 4) || table.SquareEvery < 0 || table.SquaringLoss.Sign < 0))
        {
            yield return Finding.Of("cutting.table", place, ("layers", table.Layers), ("every", table.SquareEvery), ("loss", table.SquaringLoss));
        }

        if (terms.Table is { } said && (said.RulerLength.Sign <= 0 || said.RulerLength > TableTerms.LongestRuler))
        {
            yield return Finding.Of("cutting.ruler", place, ("ruler", said.RulerLength), ("most", TableTerms.LongestRuler));
        }

        if (!CutOrder.IsWhole(problem.Order))
        {
            yield return Finding.Of("cutting.order", place);
        }

        if (terms.Increments.IsDefaultOrEmpty || terms.Increments.Any(step => step.Sign <= 0))
        {
            yield return Finding.Of("cutting.increments", place);
        }

        if (problem.SpareStrips < 0)
        {
            yield return Finding.Of("cutting.spare-strips", place, ("count", problem.SpareStrips));
        }
    }

    private static Finding? OfDemand(ClothDemand demand, Length strip)
    {
        var place = demand.Piece.Value;
        var (width, height) = (demand.Width, demand.Height);
        if (width.Sign <= 0 || height.Sign <= 0 || width > LongestPiece || height > LongestPiece)
        {
            return Finding.Of("cutting.size", place, ("label", demand.Label), ("width", width), ("height", height), ("longest", LongestPiece));
        }

        if (demand.Count is < 0 or > MostOfOneClass)
        {
            return Finding.Of("cutting.count", place, ("label", demand.Label), ("count", demand.Count), ("most", MostOfOneClass));
        }

        if (width <= strip || (demand.MayTurn && height <= strip))
        {
            return null;
        }

        var rule = height <= strip ? "cutting.too-wide-unturned" : "cutting.too-wide";
        return Finding.Of(rule, place, ("label", demand.Label), ("width", width), ("height", height), ("strip", strip));
    }

    private static StripGrid? ToGrid(ClothProblem problem)
    {
        var wanted = problem.Demand.Select((demand, index) => (demand, index)).Where(d => d.demand.Count > 0).ToList();
        if (wanted.Count == 0)
        {
            return StripGrid.Of(Length.Inch, Math.Max(1, (int)problem.Terms.StripLength.InInches.Floor()), []);
        }

        var unit = new Length(GreatestCommonMeasure(wanted.SelectMany(d => new[] { d.demand.Width.InInches, d.demand.Height.InInches })));
        var width = (problem.Terms.StripLength / unit).Floor();
        var longest = wanted.Max(d => Length.Max(d.demand.Width, d.demand.Height));
        if (width > MostUnits || longest / unit > MostUnits)
        {
            return null;
        }

        int InUnits(Length length) => (int)(length / unit).Numerator;
        var pieces = wanted
            .Select(d => (d.index, d.demand, Size: Normal(InUnits(d.demand.Width), InUnits(d.demand.Height), d.demand.MayTurn)))
            .GroupBy(d => d.Size)
            .Select(same => new GridPiece(
                same.Key.Width,
                same.Key.Height,
                same.Sum(d => d.demand.Count),
                same.Key.MayTurn,
                [.. same.Select(d => d.index)]
            ));
        return StripGrid.Of(unit, (int)width, [.. pieces]) with { Fold = problem.Terms.Table is { Layers: > 1 } ? 2 : 1 };
    }

    /// <summary>A square is the same turned or not; of a piece that may turn, the shorter side counts as its width.</summary>
    private static (int Width, int Height, bool MayTurn) Normal(int width, int height, bool mayTurn) =>
        width == height ? (width, height, false)
        : mayTurn && width > height ? (height, width, true)
        : (width, height, mayTurn);

    private static Rational GreatestCommonMeasure(IEnumerable<Rational> sizes) =>
        sizes.Aggregate(
            Rational.Zero,
            (x, y) =>
                new(
                    BigInteger.GreatestCommonDivisor(x.Numerator * y.Denominator, y.Numerator * x.Denominator),
                    x.Denominator * y.Denominator
                )
        );
}
