using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml;
using Kitwright.Print.Text;

namespace Kitwright.Print.Drawing.Svg;

/// <summary>How a drawing stands on a screen.</summary>
/// <param name="ViewBox">The part of the drawing that is seen, in its own units.</param>
/// <param name="Label">What the drawing says, in words.</param>
/// <param name="KeyPrefix">Put before the ids of patterns, where several drawings share a page.</param>
/// <param name="Digits">Decimals of coordinates.</param>
/// <param name="Hairlines">Strokes in screen pixels whatever the scale: for drawings in inches.</param>
public sealed record SvgView(Box ViewBox, string Label, string KeyPrefix = "", int Digits = 3, bool Hairlines = false);

/// <summary>
/// Writes a drawing as SVG: well-formed, without scripts, styles or anything from elsewhere. Items carry
/// <c>data-id</c>, fabrics <c>data-role</c>; fills are attributes, so a style sheet may overrule them.
/// </summary>
public sealed class SvgCanvas
{
    private readonly XmlWriter xml;
    private readonly SvgView view;

    private SvgCanvas(XmlWriter xml, SvgView view)
    {
        this.xml = xml;
        this.view = view;
    }

    public static string Write(Node drawing, SvgView view)
    {
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new() { OmitXmlDeclaration = true, NewLineHandling = NewLineHandling.None }))
        {
            new SvgCanvas(xml, view).Document(drawing);
        }

        return text.ToString();
    }

    private void Document(Node drawing)
    {
        var box = view.ViewBox;
        xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attribute("viewBox", $"{Number(box.Left)} {Number(box.Top)} {Number(box.Width)} {Number(box.Height)}");
        if (view.Label.Length == 0)
        {
            // Words beside it say what the picture shows.
            Attribute("aria-hidden", "true");
        }
        else
        {
            Attribute("role", "img");
            Attribute("aria-label", view.Label);
        }

        var tiles = Tiles.In(drawing, Affine.Identity).DistinctBy(tile => (tile.Paint.Key, tile.Transform)).ToList();
        if (tiles.Count > 0)
        {
            xml.WriteStartElement("defs");
            tiles.ForEach(Pattern);
            xml.WriteEndElement();
        }

        Draw(drawing, Affine.Identity);
        xml.WriteEndElement();
    }

    private void Pattern(PlacedTile tile)
    {
        var corner = tile.Transform.Apply(new(0, 0));
        var factor = tile.Transform.Factor;
        xml.WriteStartElement("pattern");
        Attribute("id", view.KeyPrefix + tile.Name);
        Attribute("patternUnits", "userSpaceOnUse");
        Attribute("x", Number(corner.X));
        Attribute("y", Number(corner.Y));
        Attribute("width", Number(tile.Paint.Width * factor));
        Attribute("height", Number(tile.Paint.Height * factor));
        var ground = Outline.Rectangle(new(0, 0, tile.Paint.Width, tile.Paint.Height));
        var scale = Affine.Scale(factor, factor);
        Draw(new Shape(ground, Paint.Of(tile.Paint.Ground), null), scale);
        foreach (var shape in tile.Paint.Motif)
        {
            Draw(shape, scale);
        }

        xml.WriteEndElement();
    }

    private void Draw(Node node, Affine transform)
    {
        switch (node)
        {
            case Group group:
                DrawGroup(group, transform);
                break;
            case Shape shape:
                DrawShape(shape, transform);
                break;
            case TextLine line:
                DrawText(line, transform);
                break;
        }
    }

    // A group that names nothing leaves no trace: its transform is worked into its parts.
    private void DrawGroup(Group group, Affine transform)
    {
        var named = group.Class is not null || group.Id != default;
        if (named)
        {
            xml.WriteStartElement("g");
            Marks(group);
        }

        var inner = group.Transform.Then(transform);
        foreach (var node in group.Nodes)
        {
            Draw(node, inner);
        }

        if (named)
        {
            xml.WriteEndElement();
        }
    }

    private void DrawShape(Shape shape, Affine transform)
    {
        xml.WriteStartElement("path");
        Marks(shape);
        if (shape.FabricRole is not null)
        {
            Attribute("data-role", shape.FabricRole);
        }

        Attribute(
            "fill",
            shape.Fill switch
            {
                FlatPaint flat => flat.Color.ToString(),
                NamedPaint named => $"url(#{named.Name}) {named.Fallback}",
                TilePaint tile => $"url(#{view.KeyPrefix}{new PlacedTile(tile, transform).Name})",
                _ => "none",
            }
        );
        if (shape.Stroke is { } stroke)
        {
            Attribute("stroke", stroke.Ink.ToString());
            Attribute("stroke-width", Number(stroke.Width));
            Attribute("stroke-linejoin", "round");
            if (stroke.Dash is { } dash)
            {
                Attribute("stroke-dasharray", Number(dash));
            }

            if (view.Hairlines)
            {
                Attribute("vector-effect", "non-scaling-stroke");
            }
        }

        Attribute("d", new SvgPath(view.Digits).Of(shape.Outline, transform));
        xml.WriteEndElement();
    }

    private void DrawText(TextLine line, Affine transform)
    {
        var start = transform.Apply(line.Start);
        var style = line.Text.Style;
        xml.WriteStartElement("text");
        Marks(line);
        Attribute("x", Number(start.X));
        Attribute("y", Number(start.Y));
        Attribute("font-family", $"{style.Face.Family}, {Fonts.Face.Fallback.Family}, sans-serif");
        Attribute("font-size", Number(style.Size));
        Attribute("font-weight", style.Face.Weight.ToString(CultureInfo.InvariantCulture));
        Attribute("fill", style.Ink.ToString());
        xml.WriteAttributeString("xml", "space", null, "preserve");
        Spans(line.Text.Spans);
        xml.WriteEndElement();
    }

    // The page's style sheet sets fractions as such; without it they stand in plain figures.
    private void Spans(ImmutableArray<SetSpan> spans)
    {
        var inFraction = false;
        foreach (var span in spans)
        {
            if (span.IsFraction != inFraction)
            {
                if (inFraction)
                {
                    xml.WriteEndElement();
                }
                else
                {
                    xml.WriteStartElement("tspan");
                    Attribute("class", "fraction");
                }

                inFraction = span.IsFraction;
            }

            xml.WriteString(span.Text);
        }

        if (inFraction)
        {
            xml.WriteEndElement();
        }
    }

    private void Marks(Node node)
    {
        if (node.Class is not null)
        {
            Attribute("class", node.Class);
        }

        if (node.Id != default)
        {
            Attribute("data-id", node.Id.Value);
        }
    }

    private void Attribute(string name, string value) => xml.WriteAttributeString(name, value);

    private string Number(double value) => SvgPath.Number(value, view.Digits);
}
