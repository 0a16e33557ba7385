using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.Cutting.Sheets;

/// <summary>A problem of sheets that has been looked through: what can be planned, in whole units, and findings about what can not.</summary>
/// <param name="Grid">Null where nothing can be planned.</param>
public sealed record SheetIntake(SheetGrid? Grid, ImmutableArray<Finding> Findings)
{
    /// <summary>Beyond this a side is too long for the tables of the engine.</summary>
    private const int MostUnits = 1 << 22;

    public static SheetIntake Of(SheetProblem problem)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var demand = new List<int>();
        for (var i = 0; i < problem.Demand.Length; i++)
        {
            if (OfDemand(problem.Demand[i]) is { } finding)
            {
                findings.Add(finding);
            }
            else if (problem.Demand[i].Count > 0)
            {
                demand.Add(i);
            }
        }

        if (demand.Count == 0)
        {
            return new(null, findings.ToImmutable());
        }

        var unit = new Length(CommonMeasure(demand.SelectMany(i => new[] { problem.Demand[i].Width.InInches, problem.Demand[i].Height.InInches })));
        var costUnit = CommonMeasure(problem.Sheets.Select(sheet => sheet.Height is null ? sheet.Cost * unit.InInches : sheet.Cost));
        var sheets = problem.Sheets.Select(sheet => ToGrid(sheet, problem.Terms, unit, costUnit)).ToImmutableArray();
        if (sheets.Any(sheet => sheet is null))
        {
            return new(null, [.. findings, Finding.Of("cutting.grid", "list")]);
        }

        var pieces = ImmutableArray.CreateBuilder<GridRectangle>();
        foreach (var i in demand)
        {
            var piece = ToGrid(problem, i, unit, [.. sheets.Select(sheet => sheet!)]);
            if (piece.Sheets.IsEmpty)
            {
                findings.Add(NoSheet(problem, problem.Demand[i]));
            }
            else
            {
                pieces.Add(piece);
            }
        }

        return pieces.Count == 0
            ? new(null, findings.ToImmutable())
            : new(new(unit, costUnit, problem.Terms, [.. sheets.Select(sheet => sheet!)], pieces.ToImmutable()), findings.ToImmutable());
    }

    private static Finding? OfDemand(SheetDemand demand)
    {
        var place = demand.Piece.Value;
        if (demand.Width.Sign <= 0 || demand.Height.Sign <= 0 || demand.Width > ClothIntake.LongestPiece || demand.Height > ClothIntake.LongestPiece)
        {
            return Finding.Of(
                "cutting.size",
                place,
                ("label", demand.Label),
                ("width", demand.Width),
                ("height", demand.Height),
                ("longest", ClothIntake.LongestPiece)
            );
        }

        return demand.Count is < 0 or > ClothIntake.MostOfOneClass
            ? Finding.Of("cutting.count", place, ("label", demand.Label), ("count", demand.Count), ("most", ClothIntake.MostOfOneClass))
            : null;
    }

    private static Finding NoSheet(SheetProblem problem, SheetDemand demand) =>
        problem.Sheets is [{ Height: null } roll] && Layers(problem.Terms) > 1 && Narrowest(demand) <= roll.Width - problem.Terms.TrimAcross
            ? Finding.Of(
                "sheets.too-wide-folded",
                demand.Piece.Value,
                ("label", demand.Label),
                ("width", Narrowest(demand)),
                ("layers", Layers(problem.Terms)),
                ("room", (roll.Width - problem.Terms.TrimAcross) / (Rational)Layers(problem.Terms))
            )
        : Finding.Of(
            demand.MayTurn || problem.Sheets.Length == 0 ? "sheets.too-large" : "sheets.too-large-unturned",
            demand.Piece.Value,
            ("label", demand.Label),
            ("width", demand.Width),
            ("height", demand.Height)
        );

    /// <summary>A roll's strips are cut in so many layers at least; a piece must fit one of them.</summary>
    private static int Layers(SheetTerms terms) => terms.Folds.IsDefaultOrEmpty ? 1 : terms.Folds.Min();

    private static Length Narrowest(SheetDemand demand) => demand.MayTurn ? Length.Min(demand.Width, demand.Height) : demand.Width;

    private static GridSheet? ToGrid(StockSheet sheet, SheetTerms terms, Length unit, Rational costUnit)
    {
        var width = ((sheet.Width - terms.TrimAcross) / unit).Floor();
        var height = sheet.Height is { } down ? ((down - terms.TrimAlong) / unit).Floor() : (BigInteger?)null;
        if (width > MostUnits || height > MostUnits)
        {
            return null;
        }

        var cost = (sheet.Height is null ? sheet.Cost * unit.InInches : sheet.Cost) / costUnit;
        return new((int)BigInteger.Max(width, 0), height is { } h ? (int)BigInteger.Max(h, 0) : null, sheet.Count, (long)cost.Numerator);
    }

    private static GridRectangle ToGrid(SheetProblem problem, int index, Length unit, ImmutableArray<GridSheet> sheets)
    {
        var demand = problem.Demand[index];
        var (width, height) = ((int)(demand.Width / unit).Numerator, (int)(demand.Height / unit).Numerator);
        bool Holds(int s, int w, int h) =>
            w <= (sheets[s].Height is null ? sheets[s].Width / Layers(problem.Terms) : sheets[s].Width) && h <= (sheets[s].Height ?? int.MaxValue);
        return new(
            width,
            height,
            demand.Count,
            demand.MayTurn && width != height,
            index,
            [
                .. Enumerable
                    .Range(0, sheets.Length)
                    .Where(s => sheets[s].Count != 0)
                    .Where(s => demand.Sheets.IsEmpty || demand.Sheets.Contains(problem.Sheets[s].Id))
                    .Where(s => Holds(s, width, height) || (demand.MayTurn && Holds(s, height, width))),
            ]
        );
    }

    private static Rational CommonMeasure(IEnumerable<Rational> sizes) =>
        sizes.Aggregate(
            Rational.Zero,
            (x, y) =>
                new(
                    BigInteger.GreatestCommonDivisor(x.Numerator * y.Denominator, y.Numerator * x.Denominator),
                    x.Denominator * y.Denominator
                )
        );
}
