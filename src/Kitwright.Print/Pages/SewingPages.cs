using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Sewing;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.Print.Pages;

/// <summary>The quilt top in steps: each with its words, its drawing, its count and its size.</summary>
internal static class SewingPages
{
    private const double NumberColumn = 24;
    private const double TextColumn = 206;
    private const double DrawingHeight = 210;
    private const double RulerSide = 96;

    public static Section Of(BookletSource source)
    {
        var steps = Directions.Of(source.Plan);
        var numbers = steps.ToDictionary(step => step.Recipe, step => step.Number);
        var pictures = new StepPicture(
            source.Plan,
            source.Fills.OfRole,
            id =>
                numbers.TryGetValue(id, out var number)
                    ? source.Say("step.part", ("number", number))
                    : source.Plan.Pieces.First(piece => piece.Id == id).Label
        );
        return Section.Titled(
            source.Say("print.sewing"),
            [
                Texts.Body(source.Say("print.sewing.how", ("seam", source.Plan.Seam))),
                Texts.Body(Times(source)),
                .. OwnTimes(source),
                Texts.Body(source.Say("print.sewing.caution")),
                .. steps.Select(step => Step(source, step, pictures)),
            ]
        );
    }

    private static string Times(BookletSource source)
    {
        var fast = WorkSheet.Of(source.Plan, StandardTimes.Of(Practice.Experienced), source.Sewist.Allowances);
        var slow = WorkSheet.Of(source.Plan, StandardTimes.Of(Practice.Beginner), source.Sewist.Allowances);
        return source.Say(
            "print.sewing.times",
            ("experienced", Duration.Say(fast.Sewing)),
            ("beginner", Duration.Say(slow.Sewing)),
            ("cutting", Duration.Say(fast.Cutting)),
            ("cuttingBeginner", Duration.Say(slow.Cutting))
        );
    }

    private static IEnumerable<Element> OwnTimes(BookletSource source)
    {
        if (source.Sewist.Times is { } times)
        {
            var own = WorkSheet.Of(source.Plan, times, source.Sewist.Allowances);
            yield return Texts.Body(source.Say("times.own.whole", ("sewing", Duration.Say(own.Sewing)), ("cutting", Duration.Say(own.Cutting))));
        }
    }

    private static Together Step(BookletSource source, SewingStep step, StepPicture pictures)
    {
        var recipe = source.Plan.Sewing.Recipes.First(r => r.Id == step.Recipe);
        var words = Words(source, step);
        var beside = source.Width - NumberColumn - TextColumn - 20;
        var wide = pictures.Of(recipe, source.Width - NumberColumn, DrawingHeight);
        // A long row would be too small beside its words.
        var below = wide.Width > beside && wide.Height < 0.4 * wide.Width;
        var picture = Figure(source, step, below ? wide : pictures.Of(recipe, beside, DrawingHeight));
        Element body = below
            ? Stack.Of(8, words, picture)
            : new Row([new(TextColumn, words), new(null, picture with { Horizontal = HorizontalPlace.Center })], 20);
        if (recipe.Verbs.Any(v => v is Trim { Counted: true }) && Rounds.Last(recipe) is not null)
        {
            body = Stack.Of(8, body, Ruler(source, recipe, pictures));
        }

        var number = Texts.Plain(step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), Look.Heading.In(Look.Accent));
        return new(
            Stack.Of(0, new Blank(8), new Row([new(NumberColumn, number with { Role = Role.Paragraph }), new(null, body)]))
        );
    }

    /// <summary>Where the ruler lies for a trim, beside the words for the hand that holds it.</summary>
    private static Row Ruler(BookletSource source, Recipe recipe, StepPicture pictures)
    {
        var picture = TrimPicture.Of(pictures, recipe, RulerSide, source.Sewist.LeftHanded);
        var figure = picture with { Drawing = new Group([picture.Drawing]) { Role = Role.Figure(source.Say("print.trim.alt")) } };
        return new([new(TextColumn, Texts.Small(source.Say("print.trim.ruler", ("hand", source.Sewist.LeftHanded ? "left" : "right")))), new(null, figure)], 20);
    }

    private static Stack Words(BookletSource source, SewingStep step) =>
        Stack.Of(
            4,
            [
                Texts.Heading(SentenceStart.Of(source.Say(step.Title))),
                .. step.Lines.Select(line => Texts.Body(source.Say(line))),
                .. step.UsesCutter ? [Texts.Small(source.Say("print.step.cutter"))] : Array.Empty<Element>(),
            ]
        );

    private static Picture Figure(BookletSource source, SewingStep step, Picture picture) =>
        picture with
        {
            Drawing = new Group([picture.Drawing])
            {
                Id = step.Id,
                Role = Role.Figure(source.Say("print.alt.step", ("number", step.Number), ("what", step.Title))),
            },
        };
}
