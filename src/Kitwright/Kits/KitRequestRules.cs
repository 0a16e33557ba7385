using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>What a request for kits must be before it is planned.</summary>
public static class KitRequestRules
{
    /// <summary>Kits of one colorway.</summary>
    public const int MostKits = 10_000;

    /// <summary>Lengths over all kits of the request.</summary>
    public const int MostCuts = 200_000;

    public static ImmutableArray<Finding> Findings(Shelf shelf, KitRequest request, KitTerms terms)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (request.Lines.IsEmpty)
        {
            findings.Add(Finding.Of("kits.no-colorway", "request"));
        }

        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var line in request.Lines)
        {
            if (!names.Add(line.Colorway))
            {
                findings.Add(Finding.Of("kits.colorway-twice", Place(line), ("colorway", line.Colorway)));
            }

            if (line.Kits is < 0 or > MostKits)
            {
                findings.Add(Finding.Of("kits.count", Place(line), ("colorway", line.Colorway), ("kits", line.Kits), ("most", MostKits)));
            }

            if (line.Needs.Lengths.IsEmpty)
            {
                findings.Add(Finding.Of("kits.no-needs", Place(line), ("colorway", line.Colorway)));
            }

            foreach (var need in line.Needs.Lengths)
            {
                findings.AddRange(Findings(shelf, terms, line, need));
            }
        }

        var cuts = request.Lines.Sum(l => (long)Math.Clamp(l.Kits, 0, MostKits) * l.Needs.Lengths.Length);
        if (cuts > MostCuts)
        {
            findings.Add(Finding.Of("kits.too-many", "request", ("cuts", cuts), ("most", MostCuts)));
        }

        return findings.ToImmutable();
    }

    private static IEnumerable<Finding> Findings(Shelf shelf, KitTerms terms, KitLine line, Need need)
    {
        var place = $"{Place(line)}/need/{need.Letter}";
        if (need.Length.Sign <= 0)
        {
            yield return Finding.Of("kits.need-not-above-zero", place, ("letter", need.Letter), ("length", need.Length));
        }

        if (need.Fabric is not { } number)
        {
            yield return Finding.Of("kits.no-fabric", place, ("letter", need.Letter), ("colorway", line.Colorway));
            yield break;
        }

        if (shelf.Fabric(number) is null)
        {
            yield return Finding.NoteOf("kits.unknown-fabric", place, ("fabric", number), ("letter", need.Letter));
        }

        var most = terms.PutUpOf(shelf, number) - terms.LoadLoss;
        if (need.Length > most)
        {
            yield return Finding.NoteOf(
                "kits.longer-than-bolt",
                place,
                ("fabric", shelf.NameOf(number)),
                ("letter", need.Letter),
                ("length", need.Length),
                ("most", Length.Max(most, Length.Zero))
            );
        }
    }

    private static string Place(KitLine line) => $"kit/{line.Colorway}";
}
