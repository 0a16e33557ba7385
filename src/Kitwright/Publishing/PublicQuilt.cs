using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Quilts;

namespace Kitwright.Publishing;

/// <summary>
/// All that may be said of a quilt outside the shop where the pattern is somebody else's. No field of it can hold a
/// size, so nothing that is made from it can tell one.
/// </summary>
/// <param name="Owner">Whose pattern it is; null for the shop's own.</param>
/// <param name="Copies">Bought copies of the pattern that go into each kit.</param>
/// <param name="Shows">Whether a drawing of it may be shown.</param>
public sealed record PublicQuilt(string Name, string? Owner, int Copies, bool Shows, ImmutableArray<PublicColorway> Colorways)
{
    public static PublicQuilt Of(Quilt quilt) =>
        new(
            quilt.Name,
            quilt.Licensed?.Owner,
            quilt.Licensed is null ? 0 : 1,
            quilt.Licensed?.ShowDrawing ?? true,
            [.. quilt.Colorways.Select(c => new PublicColorway(c.Name, [.. c.Fabrics.Values.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)]))]
        );

    /// <summary>Why no booklet is printed; null where one may be.</summary>
    public static Finding? NoBooklet(Quilt quilt) =>
        quilt.Licensed is { } license ? Finding.Of("license.booklet", "/licensed", ("owner", license.Owner)) : null;

    /// <summary>Why no templates are printed; null where they may be.</summary>
    public static Finding? NoTemplates(Quilt quilt) =>
        quilt.Licensed is { } license ? Finding.Of("license.templates", "/licensed", ("owner", license.Owner)) : null;

    /// <summary>Why other programs are told nothing that holds a size; null where they may be.</summary>
    public static Finding? NoSizes(Quilt quilt) =>
        quilt.Licensed is { } license ? Finding.Of("license.sizes", "/licensed", ("owner", license.Owner)) : null;
}

/// <param name="Fabrics">Stock numbers.</param>
public sealed record PublicColorway(string Name, ImmutableArray<string> Fabrics);
