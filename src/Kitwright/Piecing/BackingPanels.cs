using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>
/// The panels of a backing: as many widths of cloth as cover one direction, each as long as the other. Both ways
/// round are tried and the shorter purchase wins, unless the owner says where the seams run ([DIYP], [STC]). An even
/// number of panels would put a seam in the middle, where the quilt is folded most: one panel is halved where it is wide
/// enough for the seam more.
/// </summary>
internal static class BackingPanels
{
    /// <param name="stands">Whether its print has an up, so that the cloth runs from the foot of the quilt to its head.</param>
    public static BackingPlan Of(Backing backing, Length topWidth, Length topHeight, ClothTerms terms, bool stands = false)
    {
        Length width = topWidth + (backing.Overhang * 2),
            height = topHeight + (backing.Overhang * 2);
        var down = Plan(backing, width, height, terms, across: false);
        var over = Plan(backing, width, height, terms, across: true);
        return backing.Seams switch
        {
            PanelSeams.Down => down,
            PanelSeams.Across => over,
            _ => !stands && over.Purchase < down.Purchase ? over : down,
        };
    }

    private static BackingPlan Plan(Backing backing, Length width, Length height, ClothTerms terms, bool across)
    {
        var (covered, length) = across ? (height, width) : (width, height);
        var panels = Count(covered, terms.UsableWidth, backing.Seam);
        // With one panel halved, a half to each side, there are as many seams as panels ([BELLA], [QB-BK]).
        var halved = panels % 2 == 0 && ((terms.UsableWidth - (backing.Seam * 2)) * panels) >= covered;
        return new(
            backing.Overhang,
            width,
            height,
            panels,
            across,
            terms.UsableWidth,
            length,
            backing.Seam,
            terms.Purchase((length * panels) + terms.Straightening)
        )
        {
            HalvesOutside = halved,
        };
    }

    /// <summary>The least n with n widths, less two allowances a seam, at least as wide as wanted.</summary>
    public static int Count(Length wanted, Length usable, Length seam) =>
        Math.Max(1, (int)((wanted - (seam * 2)) / (usable - (seam * 2))).Ceiling());
}
