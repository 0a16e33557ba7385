using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// Lengths divided along the selvage: each lengthwise piece lies unturned and side by side with the others within the
/// width, none is longer than the section, and the strips beside fit the rest.
/// </summary>
internal static class SectionRules
{
    /// <summary>All strips of a cloth, those beside sections included, and each section as a strip of its length.</summary>
    public static IEnumerable<StripCut> AllStrips(ClothPlan cloth) =>
        [
            .. cloth.Sections.SelectMany(section => section.Beside.Prepend(new(section.Id, section.Length, 1, section.Cuts))),
            .. cloth.Strips,
        ];

    /// <summary>How many of each piece the sections and the strips beside them give.</summary>
    public static Dictionary<PathId, long> Given(ClothPlan cloth)
    {
        var given = new Dictionary<PathId, long>();
        foreach (var strip in AllStrips(cloth with { Strips = [] }))
        {
            foreach (var sub in strip.SubCuts)
            {
                foreach (var entry in sub.Stack)
                {
                    given[entry.Piece] = given.GetValueOrDefault(entry.Piece) + ((long)strip.Times * sub.Times * entry.Times);
                }
            }
        }

        return given;
    }

    public static void Check(ClothPlan cloth, FindingList findings)
    {
        var lengthwise = cloth.Demand.Where(d => d.Lengthwise).GroupBy(d => d.Piece).ToDictionary(same => same.Key, same => same.First());
        foreach (var section in cloth.Sections)
        {
            Divided(cloth, section, lengthwise, findings);
        }

        // A lengthwise piece in an ordinary strip would have its threads run the wrong way.
        foreach (var strip in cloth.Strips.Concat(cloth.Sections.SelectMany(s => s.Beside)))
        {
            if (strip.SubCuts.Any(sub => sub.Stack.Any(entry => lengthwise.ContainsKey(entry.Piece))))
            {
                findings.Add("check.cloth.lengthwise", strip.Id.Value);
            }
        }
    }

    private static void Divided(
        ClothPlan cloth,
        LengthwiseSection section,
        Dictionary<PathId, ClothDemand> lengthwise,
        FindingList findings
    )
    {
        Length wide = Length.Zero,
            longest = Length.Zero;
        foreach (var cut in section.Cuts)
        {
            if (cut.Times <= 0 || cut.Stack is not [{ Times: 1, Turned: false } only] || !lengthwise.TryGetValue(only.Piece, out var piece) || piece.Width != cut.Width)
            {
                findings.Add("check.cloth.section-cut", cut.Id.Value);
                return;
            }

            wide += cut.Width * cut.Times;
            longest = Length.Max(longest, piece.Height);
        }

        if (section.Length != longest || longest.Sign <= 0)
        {
            findings.Add("check.cloth.section-length", section.Id.Value, Say.Inches(section.Length), Say.Inches(longest));
        }

        var room = TermsRule.StripLength(cloth.Terms) - wide;
        if (room.Sign < 0)
        {
            findings.Add("check.cloth.strip-too-long", section.Id.Value, Say.Inches(wide), Say.AtMost(Say.Inches(TermsRule.StripLength(cloth.Terms))));
            return;
        }

        Beside(section, room, findings);
    }

    private static void Beside(LengthwiseSection section, Length room, FindingList findings)
    {
        var high = Length.Zero;
        foreach (var strip in section.Beside)
        {
            high += strip.Height * strip.Times;
            var along = strip.SubCuts.Aggregate(Length.Zero, (sum, sub) => sum + (sub.Width * sub.Times));
            if (along > room)
            {
                findings.Add("check.cloth.strip-too-long", strip.Id.Value, Say.Inches(along), Say.AtMost(Say.Inches(room)));
            }
        }

        if (high > section.Length)
        {
            findings.Add("check.cloth.section-full", section.Id.Value, Say.Inches(high), Say.AtMost(Say.Inches(section.Length)));
        }
    }
}
