using Kitwright.Print.Drawing;
using Kitwright.Print.Fonts;

namespace Kitwright.Print.Text;

/// <summary>How text looks. Sizes are in points (1/72 in).</summary>
/// <param name="Leading">From one baseline to the next, in points.</param>
/// <param name="Tabular">Whether figures all take the same width, so that they stand under one another.</param>
public sealed record TextStyle(Face Face, double Size, double Leading, Color Ink, bool Tabular = false)
{
    /// <summary>Nothing in a booklet is set smaller, in points.</summary>
    public const double LeastSize = 9;

    public TextStyle Bold => this with { Face = Face.SemiBold };

    public TextStyle In(Color ink) => this with { Ink = ink };

    /// <summary>Height of capitals and figures in points, for centering on something drawn.</summary>
    public double CapHeight => Face.File.CapHeight * Size;

    /// <summary>From the top of a line to its baseline: capitals stand in the middle of the leading.</summary>
    public double Baseline => (Leading + CapHeight) / 2;
}
