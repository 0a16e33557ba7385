namespace Kitwright.Print.Drawing;

/// <summary>The box that holds a drawing, strokes aside.</summary>
public static class Extent
{
    public static Box Of(Node node, Affine transform)
    {
        var boxes = Boxes(node, transform).ToList();
        if (boxes.Count == 0)
        {
            return default;
        }

        double left = boxes.Min(box => box.Left),
            top = boxes.Min(box => box.Top);
        return new(left, top, boxes.Max(box => box.Right) - left, boxes.Max(box => box.Bottom) - top);
    }

    private static IEnumerable<Box> Boxes(Node node, Affine transform) =>
        node switch
        {
            Group group => group.Nodes.SelectMany(child => Boxes(child, group.Transform.Then(transform))),
            Shape shape => [shape.Outline.Moved(transform).Bounds()],
            TextLine line => [TextBox(line, transform.Apply(line.Start))],
            _ => [],
        };

    private static Box TextBox(TextLine line, Place start)
    {
        var style = line.Text.Style;
        double above = style.Face.File.Ascender * style.Size,
            below = style.Face.File.Descender * style.Size;
        return new(start.X, start.Y - above, line.Text.Width, above + below);
    }
}
