using System.Collections.Immutable;
using Kitwright.Print.Drawing;
using Kitwright.Print.Text;

namespace Kitwright.Print.Flow;

/// <summary>Flowing text. A break leaves at least two lines on either page.</summary>
public sealed record Paragraph(ImmutableArray<TextRun> Runs, TextStyle Style) : Element
{
    private const int LeastLines = 2;

    /// <summary>The role of the whole paragraph; null where the cell around it has one.</summary>
    public Role? Role { get; init; } = Role.Paragraph;
    public HorizontalPlace Horizontal { get; init; }

    /// <summary>Lines of a paragraph begun on the page before; null for a whole one.</summary>
    private ImmutableArray<ImmutableArray<SetText>>? Remaining { get; init; }

    public static Paragraph Of(string text, TextStyle style) => new([new(text, style)], style);

    public override Fit Lay(Space space)
    {
        var lines = Remaining ?? LineBreaker.Lines(Runs, space.Width);
        var room = (int)Math.Floor((space.Height + 0.001) / Style.Leading);
        if (lines.Length <= room)
        {
            return new Whole(lines.Length * Style.Leading, Draw(lines, space.Width));
        }

        var here = Math.Min(room, lines.Length - LeastLines);
        return here < LeastLines || KeepWithNext
            ? new Refused("a paragraph", Math.Min(lines.Length, LeastLines) * Style.Leading, space.Height)
            : new Part(here * Style.Leading, Draw(lines[..here], space.Width), this with { Remaining = lines[here..] });
    }

    private Group Draw(ImmutableArray<ImmutableArray<SetText>> lines, double width)
    {
        var drawn = ImmutableArray.CreateBuilder<Node>();
        for (var i = 0; i < lines.Length; i++)
        {
            var x = Horizontal.Offset(lines[i].Sum(text => text.Width), width);
            foreach (var text in lines[i])
            {
                drawn.Add(new TextLine(text, new(x, (i * Style.Leading) + Style.Baseline)));
                x += text.Width;
            }
        }

        return new(drawn.ToImmutable()) { Role = Role };
    }
}
