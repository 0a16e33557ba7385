using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Quilts.Sentences;

namespace Kitwright.Print.Pages;

/// <summary>The quilt in its fabrics, and the sentence that states it.</summary>
internal static class CoverPage
{
    private const double Above = 18;
    private const double Below = 20;

    public static Section Of(BookletSource source)
    {
        var plan = source.Plan;
        var colorway = plan.Colorway is { } name
            ? source.Say("print.in-colorway", ("colorway", name))
            : source.Say("print.no-colorway");
        Element[] title =
        [
            Texts.Heading(plan.Quilt, Look.Title, level: 1),
            Texts.Plain(colorway, Look.Lead.In(Look.Accent)) with { Role = Role.Paragraph },
            new Blank(Above),
        ];
        Element[] sentence =
        [
            new Blank(Below),
            Texts.Plain(source.Say(QuiltSentences.Top(source.Quilt, plan.Design)), Look.Lead) with { Role = Role.Paragraph },
        ];
        var words = Height(source, title) + Height(source, sentence);
        return new(source.Title, new Stack([.. title, QuiltInFabrics(source, source.Height - words - Below), .. sentence]));
    }

    private static double Height(BookletSource source, Element[] elements) =>
        elements.Sum(element => ((Whole)element.Lay(new Space(source.Width, 0).Endless)).Height);

    private static Picture QuiltInFabrics(BookletSource source, double room)
    {
        var design = source.Plan.Design;
        double width = design.Width.InInches.ToDouble(),
            height = design.Height.InInches.ToDouble();
        var scale = Math.Min(source.Width / width, room / height);
        var quilt = new Group([QuiltPicture.Of(design, source.Fills.OfRole, Look.Seam)])
        {
            Transform = Affine.Scale(scale, scale),
            Role = Role.Figure(source.Say("print.alt.quilt", ("title", source.Title), ("width", design.Width), ("height", design.Height))),
        };
        return new(quilt, width * scale, height * scale) { Horizontal = HorizontalPlace.Center };
    }
}
