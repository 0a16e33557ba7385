using Kitwright.Measure;

namespace Kitwright.App.Features.Deciding;

/// <summary>The steps in which widths are offered, and how they are written: inches and their parts, or centimeters.</summary>
public sealed record Ruler(LengthUnit Unit)
{
    private bool Metric => Unit == LengthUnit.Centimeter;

    /// <summary>1/4 in or 5 mm.</summary>
    public Length Fine => Metric ? Length.Millimeters(5) : Length.Inches(0, 1, 4);

    /// <summary>1 in or 2 cm.</summary>
    public Length Coarse => Metric ? Length.Millimeters(20) : Length.Inch;

    /// <summary>So many inches, or 2.5 cm for each.</summary>
    public Length Reach(int inches) => Metric ? Length.Millimeters(25 * inches) : Length.Inches(inches);

    /// <summary>Beside a sentence's own unit.</summary>
    public string Text(Length length) => Metric ? LengthText.Centimeters(length) : LengthText.Inches(length);

    /// <summary>As an address holds it.</summary>
    public string Value(Length length) => Metric ? Text(length) + " cm" : Text(length);
}
