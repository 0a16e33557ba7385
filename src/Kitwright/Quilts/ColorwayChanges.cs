using Kitwright.Findings;

namespace Kitwright.Quilts;

/// <summary>A quilt with one colorway more, one renamed or one fewer. Names differ in more than capitals.</summary>
public static class ColorwayChanges
{
    /// <summary>At the end; refused where the name is empty, too long or taken, and where there are enough.</summary>
    public static Checked<Quilt> Added(Quilt quilt, Colorway colorway)
    {
        if (quilt.Colorways.Length >= QuiltLimits.Colorways)
        {
            return Checked<Quilt>.Failed(Finding.Of("colorways.full", "/colorways", ("most", QuiltLimits.Colorways)));
        }

        return Named(quilt, colorway.Name) is { } refused
            ? Checked<Quilt>.Failed(refused)
            : Checked<Quilt>.Of(quilt with { Colorways = quilt.Colorways.Add(colorway with { Name = colorway.Name.Trim() }) });
    }

    /// <summary>A name may be renamed to itself in other capitals.</summary>
    public static Checked<Quilt> Renamed(Quilt quilt, string from, string to)
    {
        var others = Without(quilt, from);
        return Named(others, to) is { } refused
            ? Checked<Quilt>.Failed(refused)
            : Checked<Quilt>.Of(quilt with { Colorways = [.. quilt.Colorways.Select(c => Is(c, from) ? c with { Name = to.Trim() } : c)] });
    }

    public static Quilt Without(Quilt quilt, string name) => quilt with { Colorways = quilt.Colorways.RemoveAll(c => Is(c, name)) };

    private static bool Is(Colorway colorway, string name) => string.Equals(colorway.Name, name, StringComparison.OrdinalIgnoreCase);

    private static Finding? Named(Quilt quilt, string name) =>
        name.Trim() is not { Length: > 0 and <= QuiltLimits.Name } trimmed ? Finding.Of("colorways.unnamed", "/colorways", ("most", QuiltLimits.Name))
        : quilt.Colorways.Any(c => string.Equals(c.Name, trimmed, StringComparison.OrdinalIgnoreCase)) ? Finding.Of("colorways.taken", "/colorways", ("name", trimmed))
        : null;
}
