using Kitwright.Print.Drawing;
using Kitwright.Print.Fonts;
using Kitwright.Print.Text;

namespace Kitwright.Print;

/// <summary>Paper, ink and one accent; a handful of sizes.</summary>
public static class Look
{
    public static Color Ink { get; } = Color.Parse("#24211c");

    /// <summary>For what stands beside the matter: captions, running feet.</summary>
    public static Color Pencil { get; } = Color.Parse("#635c50");
    public static Color Line { get; } = Color.Parse("#d9d2c3");
    public static Color Wash { get; } = Color.Parse("#f6f2e9");
    public static Color Accent { get; } = Color.Parse("#8f2d1f");
    public static Color Paper { get; } = Color.White;

    public static TextStyle Title { get; } = new(Face.SemiBold, 34, 40, Ink);
    public static TextStyle Section { get; } = new(Face.SemiBold, 20, 26, Ink);
    public static TextStyle Heading { get; } = new(Face.SemiBold, 12.5, 17, Ink);
    public static TextStyle Lead { get; } = new(Face.Regular, 12.5, 19, Ink);
    public static TextStyle Body { get; } = new(Face.Regular, 10, 14.5, Ink);
    public static TextStyle Small { get; } = new(Face.Regular, 9, 12.5, Pencil);
    public static TextStyle Figures { get; } = Body with { Tabular = true };

    /// <summary>Labels of pieces, in drawings.</summary>
    public static TextStyle Label { get; } = new(Face.SemiBold, 9, 11, Ink);

    public static Stroke Rule { get; } = new(Line, 0.75);

    /// <summary>Seams within a drawing of cloth.</summary>
    public static Stroke Seam { get; } = new(Ink, 0.25);
    public static Stroke Edge { get; } = new(Ink, 0.6);

    /// <summary>Where scissors go, and what is only meant.</summary>
    public static Stroke Dashes { get; } = new(Pencil, 0.6, 3);
}
