using Kitwright.Checking.Cloths;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Finishing;

/// <summary>Backing and batting reach beyond the top on each side; the panels of the backing, joined, are wide enough.</summary>
internal static class BackingRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        var backing = plan.Backing;
        Length width = plan.Design.Width + (backing.Overhang * 2),
            height = plan.Design.Height + (backing.Overhang * 2);
        if (backing.Overhang.Sign < 0 || backing.Width != width || backing.Height != height)
        {
            findings.Add("check.backing.size", "backing", Say.Size(backing.Width, backing.Height), Say.Size(width, height));
        }

        if (plan.Needs.Batting is { } batting && (batting.Width != width || batting.Height != height))
        {
            findings.Add("check.batting.size", "batting", Say.Size(batting.Width, batting.Height), Say.Size(width, height));
        }

        if (plan.Needs.Batting?.Package is { } package && !(Holds(package.Width, package.Height) || Holds(package.Height, package.Width)))
        {
            findings.Add("check.batting.package", "batting", Say.Size(package.Width, package.Height), Say.AtLeast(Say.Size(width, height)));
        }

        bool Holds(Length across, Length down) => across >= width && down >= height;

        Panels(backing, findings);
        Bought(plan, findings);
    }

    private static void Panels(BackingPlan backing, FindingList findings)
    {
        // Seams across the quilt lie above one another: the panels' widths add up to its height.
        var (across, along) = backing.Across ? (backing.Height, backing.Width) : (backing.Width, backing.Height);
        if (backing.PanelLength != along)
        {
            findings.Add("check.backing.panel-length", "backing", Say.Inches(backing.PanelLength), Say.Inches(along));
        }

        var joined = Joined(backing.Panels, backing);
        if (backing.HalvesOutside && backing.Panels < 2)
        {
            findings.Add("check.backing.halves", "backing", Say.Count(backing.Panels), Say.AtLeast(Say.Count(2)));
        }

        if (backing.Panels < 1 || backing.Seam.Sign < 0 || joined < across)
        {
            findings.Add("check.backing.panels", "backing", Say.Inches(joined), Say.AtLeast(Say.Inches(across)));
        }
        else if (backing.Panels > 1 && Joined(backing.Panels - 1, backing) >= across)
        {
            findings.Add("check.backing.panels-over", "backing", Say.Count(backing.Panels), Say.Count(backing.Panels - 1));
        }
    }

    /// <summary>With one panel halved and a half at each side there is a seam more.</summary>
    private static Length Joined(int panels, BackingPlan backing) =>
        (backing.UsableWidth * panels) - (backing.Seam * 2 * (panels - (backing.HalvesOutside && panels == backing.Panels ? 0L : 1L)));

    /// <summary>Panels and straightening, in the increments that the shop uses for the quilt's other cloth.</summary>
    private static void Bought(QuiltPlan plan, FindingList findings)
    {
        var lengths = plan
            .Cloths.Select(c => c.Terms)
            .Where(TermsRule.ArePossible)
            .Select(t => LengthRules.LeastSaleable((plan.Backing.PanelLength * plan.Backing.Panels) + t.Straightening, t))
            .Distinct()
            .ToArray();
        if (lengths.Length > 0 && !lengths.Contains(plan.Backing.Purchase))
        {
            findings.Add(
                "check.backing.purchase",
                "backing",
                Say.Inches(plan.Backing.Purchase),
                Say.Inches(lengths[0])
            );
        }
    }
}
