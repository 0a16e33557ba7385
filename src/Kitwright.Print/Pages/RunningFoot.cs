using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Pdf;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pages;

/// <summary>Title, plan mark and page number at the foot of each page.</summary>
internal static class RunningFoot
{
    private const double AboveEdge = 34;

    public static Node Under(Node page, BookletSource source, int number, int count, PageSize size)
    {
        var baseline = size.Height - AboveEdge;
        var title = SetText.Of(source.Say("print.foot", ("title", source.Title), ("mark", source.Plan.Mark)), Look.Small);
        var place = SetText.Of(source.Say("print.page", ("number", number), ("count", count)), Look.Small);
        var rule = Outline.Line(new(Sheet.Side, baseline - 14), new(size.Width - Sheet.Side, baseline - 14));
        return new Group(
            [
                Group.At(Sheet.Side, Sheet.Head, page),
                new Group(
                    [
                        new Shape(rule, null, Look.Rule),
                        new TextLine(title, new(Sheet.Side, baseline)),
                        new TextLine(place, new(size.Width - Sheet.Side - place.Width, baseline)),
                    ]
                )
                {
                    Role = Role.Decoration,
                },
            ]
        );
    }
}
