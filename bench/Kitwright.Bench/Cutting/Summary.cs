using System.Globalization;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Bench.Cutting;

/// <summary>What the rows of one group come to, in lines that begin with #.</summary>
internal static class Summary
{
    public static IEnumerable<string> Of(IReadOnlyCollection<CutRow> rows)
    {
        foreach (var group in rows.GroupBy(r => r.Case.Group))
        {
            CutRow[] all = [.. group];
            yield return Line(group.Key, "cases", all.Length);
            yield return Line(group.Key, "proved", all.Count(r => r.Proved), all.Length);
            yield return Line(group.Key, "average gap", all.Average(r => r.Gap));
            CutRow[] known = [.. all.Where(r => r.Case.BestKnown is not null)];
            if (known.Length > 0)
            {
                yield return Line(group.Key, "at least best known", known.Count(r => r.Height <= r.Case.BestKnown), known.Length);
                yield return Line(group.Key, "better than best known", known.Count(r => r.Height < r.Case.BestKnown), known.Length);
                yield return Line(group.Key, "proved in the file", known.Count(r => r.Case.ProvedInFile), known.Length);
            }

            CutRow[] peers = [.. all.Where(r => r.Case.Peer is not null)];
            if (peers.Length > 0)
            {
                yield return Line(group.Key, "worse than the peer", peers.Count(r => r.Height > r.Case.Peer), peers.Length);
                yield return Line(group.Key, "better than the peer", peers.Count(r => r.Height < r.Case.Peer), peers.Length);
            }

            if (all[0].Case.Problem.Goal == CutGoal.ByTheStep)
            {
                yield return Line(group.Key, "purchase proved least", all.Count(r => r.Plan.PurchaseIsLeast), all.Length);
            }

            double[] milliseconds = [.. all.Select(r => r.Seconds * 1000).Order()];
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"# {group.Key}: CPU ms median {milliseconds[milliseconds.Length / 2]:0}, greatest {milliseconds[^1]:0}; allocated MB median {all.Select(r => r.Megabytes).Order().ElementAt(all.Length / 2):0.0}, greatest {all.Max(r => r.Megabytes):0.0}"
            );
            foreach (var line in AgainstTheHandbook(group.Key, all))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<string> AgainstTheHandbook(string group, CutRow[] rows)
    {
        CutRow[][] quilts = [.. rows.Where(r => r.Case.Quilt is not null).GroupBy(r => r.Case.Quilt).Select(q => q.ToArray())];
        if (quilts.Length == 0)
        {
            yield break;
        }

        static double Saved(CutRow[] quilt, Func<Plans.ClothPlan, Length> length) =>
            1 - CutRow.Number(Sum(quilt.Select(r => length(r.Plan))) / Sum(quilt.Select(r => length(r.Handbook))));

        yield return Line(group, "quilts", quilts.Length);
        yield return Line(group, "mean saving of purchase against the handbook's way", quilts.Average(q => Saved(q, p => p.Purchase)));
        yield return Line(group, "mean saving of cut length against the handbook's way", quilts.Average(q => Saved(q, p => p.Cut)));
        yield return Line(group, "cloths with more ruler settings than the handbook's", rows.Count(r => r.Plan.Figures.StripWidths > r.Handbook.Figures.StripWidths), rows.Length);
        yield return Line(group, "cloths with more passes than the handbook's", rows.Count(r => Passes(r.Plan) > Passes(r.Handbook)), rows.Length);
        // Where the handbook's way takes no more cloth there is no excuse.
        yield return Line(group, "of them with more ruler settings at no less cloth", NoDearer(rows).Count(r => r.Plan.Figures.StripWidths > r.Handbook.Figures.StripWidths));
        yield return Line(group, "of them with more passes at no less cloth", NoDearer(rows).Count(r => Passes(r.Plan) > Passes(r.Handbook)));
        CutRow[] demos = [.. rows.Where(r => r.Case.IsDemo)];
        yield return Line(group, "cloths of the demo quilts with more settings or passes", demos.Count(r => r.Plan.Figures.StripWidths > r.Handbook.Figures.StripWidths || Passes(r.Plan) > Passes(r.Handbook)), Math.Max(1, demos.Length));
    }

    private static IEnumerable<CutRow> NoDearer(CutRow[] rows) => rows.Where(r => r.Handbook.Purchase <= r.Plan.Purchase);

    private static int Passes(Plans.ClothPlan plan) => plan.Figures.Strips + plan.Figures.SubCuts + plan.Figures.Trims;

    private static Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(Length.Zero, (x, y) => x + y);

    private static string Line(string group, string what, int count) =>
        string.Create(CultureInfo.InvariantCulture, $"# {group}: {what} {count}");

    private static string Line(string group, string what, int count, int of) =>
        string.Create(CultureInfo.InvariantCulture, $"# {group}: {what} {count} of {of} ({100.0 * count / of:0.0} %)");

    private static string Line(string group, string what, double share) =>
        string.Create(CultureInfo.InvariantCulture, $"# {group}: {what} {100 * share:0.0000} %");
}
