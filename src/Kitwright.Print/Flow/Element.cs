using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>
/// Something to be laid on a page. One question, one answer: asked with the space that is left, an element says what
/// fits, how high that is, and what remains for the next page; or why nothing fits.
/// </summary>
/// <remarks>Elements are immutable: what remains is another element.</remarks>
public abstract record Element
{
    /// <summary>Whether it must stand on the same page as the beginning of what follows it.</summary>
    public bool KeepWithNext { get; init; }

    public abstract Fit Lay(Space space);
}

/// <summary>The space that is left, in points.</summary>
public readonly record struct Space(double Width, double Height)
{
    public Space Less(double height) => this with { Height = Height - height };

    /// <summary>Height enough for anything: to ask how high an element would be.</summary>
    public Space Endless => this with { Height = 1e6 };

    // Sums of heights may miss the page's height by rounding.
    public bool Holds(double height) => height <= Height + 0.001;
}

/// <summary>The answer of an element. Drawings begin at the upper left corner of the space.</summary>
public abstract record Fit;

/// <summary>All of it is drawn.</summary>
public sealed record Whole(double Height, Node Drawing) : Fit;

/// <summary>A beginning is drawn; the rest goes to the next page.</summary>
public sealed record Part(double Height, Node Drawing, Element Rest) : Fit;

/// <summary>Nothing of it fits.</summary>
/// <param name="What">The element that refused.</param>
/// <param name="Needs">Height that it needs at least, in points.</param>
/// <param name="Had">Height that there was, in points.</param>
public sealed record Refused(string What, double Needs, double Had) : Fit
{
    public override string ToString() => $"{What} needs {Needs:0.#} pt and had {Had:0.#} pt";
}
