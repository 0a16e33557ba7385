using System.Collections.Immutable;
using Kitwright.Cutting.Instructions;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>
/// The directions for a quilt, from its sewing plan alone: one step a recipe, in the order in which they can be
/// carried out, with counts, labels of the stacks used and sizes.
/// </summary>
public static class Directions
{
    public static ImmutableArray<SewingStep> Of(QuiltPlan plan)
    {
        var numbers = plan.Sewing.Recipes.Select((r, i) => (r.Id, Number: i + 1)).ToDictionary(x => x.Id, x => x.Number);
        var labels = plan.Pieces.ToDictionary(p => p.Id, p => p.Label);
        var letters = plan.Fabrics.SelectMany(f => f.Roles.Select(r => (r, f.Letter))).ToDictionary(x => x.r, x => x.Letter);
        var roles = plan.Pieces.ToDictionary(p => p.Id, p => letters[p.Role]);
        var hands = plan.Pieces.ToDictionary(p => p.Id, p => HandWords.Of(plan, p));
        var crossings = PressingReport.Of(plan, SeamTrace.Of(plan)).Steps.ToDictionary(step => step.Recipe);
        // Generous setting triangles differ only by what is cut off later: they are one stack on the table.
        var twins = plan
            .Sewing.Recipes.Where(r => r.Kind.StartsWith("setting-", StringComparison.Ordinal))
            .ToLookup(r => (r.Kind, r.Verbs.OfType<Take>().First().Piece), r => numbers[r.Id]);
        return
        [
            .. plan.Sewing.Recipes.Select(recipe =>
            {
                var number = numbers[recipe.Id];
                return new SewingStep(
                    new($"step/{number}"),
                    number,
                    recipe.Id,
                    Message.Of("step.title", ("name", recipe.Name), ("copies", recipe.Copies)),
                    [.. Lines(recipe, plan.Seam, plan.RulerStep, numbers, labels, roles, hands, twins, crossings.GetValueOrDefault(recipe.Id)), .. PrintLies.Of(recipe, plan)],
                    recipe.Verbs.Any(v => v is CutAlong or Trim)
                );
            }),
        ];
    }

    private static ImmutableArray<Message> Lines(
        Recipe recipe,
        Length seam,
        Length step,
        Dictionary<PathId, int> numbers,
        Dictionary<PathId, string> labels,
        Dictionary<PathId, string> letters,
        Dictionary<PathId, Message?> hands,
        ILookup<(string Kind, PathId Piece), int> twins,
        StepCrossings? crossings
    )
    {
        var takes = recipe.Verbs.OfType<Take>().Select(t => t.Piece).ToArray();
        var lines = ImmutableArray.CreateBuilder<Message>();
        if (recipe.Copies > 1 && recipe.Kind is not ("joined-strip" or "lengthwise-strip"))
        {
            lines.Add(Message.Of("step.uses", ("copies", recipe.Copies), ("uses", Uses(recipe, numbers, labels))));
        }

        switch (recipe.Kind)
        {
            case "half-square-two":
                lines.Add(Message.Of("step.half-square.mark", ("second", labels[takes[1]])));
                lines.Add(
                    Message.Of(
                        "step.half-square.sew",
                        ("first", labels[takes[0]]),
                        ("second", labels[takes[1]]),
                        ("seam", seam)
                    )
                );
                lines.Add(
                    Message.Of("step.half-square.cut", ("toward", PressWords.Letter(recipe, letters[takes[0]], letters[takes[1]]) ?? "none"))
                );
                break;
            case "half-square-one":
                lines.Add(Message.Of("step.half-square.mark", ("second", labels[takes[1]])));
                lines.Add(Message.Of("step.half-square-one.sew", ("first", labels[takes[0]]), ("second", labels[takes[1]])));
                lines.Add(
                    Message.Of(
                        "step.half-square-one.cut",
                        ("seam", seam),
                        ("toward", PressWords.Letter(recipe, letters[takes[0]], letters[takes[1]]) ?? "none")
                    )
                );
                break;
            case "half-square-eight":
                lines.Add(Message.Of("step.half-square-eight.mark", ("second", labels[takes[1]])));
                lines.Add(Message.Of("step.half-square-eight.sew", ("first", labels[takes[0]]), ("second", labels[takes[1]]), ("seam", seam)));
                lines.Add(Message.Of("step.half-square-eight.cut", ("toward", letters[takes[1]])));
                break;
            case "goose-four":
                lines.Add(Message.Of("step.goose-four.first", ("large", labels[takes[0]]), ("small", labels[takes[1]]), ("seam", seam)));
                lines.Add(Message.Of("step.goose-four.second", ("small", labels[takes[1]]), ("seam", seam)));
                break;
            case "strip-set":
                lines.Add(Message.Of("step.strip-set.sew", ("strips", takes.Select(t => Message.Plain(labels[t])).ToImmutableArray())));
                lines.Add(Message.Of("step.strip-set.cut", ("rows", recipe.Makes.Length), ("segment", Segment(recipe))));
                break;
            case "goose-flip" or "snowball":
                lines.Add(Message.Of("step.flip.mark", ("square", labels[takes[1]])));
                lines.Add(
                    Message.Of("step.flip.sew", ("square", labels[takes[1]]), ("body", labels[takes[0]]), ("seam", seam), ("toward", PressWords.OfFlips(recipe)))
                );
                lines.Add(
                    Message.Of(recipe.Kind == "goose-flip" ? "step.flip.second" : "step.flip.others", ("corners", takes.Length - 1))
                );
                break;
            case "joined-strip":
                lines.Add(Message.Of("step.strip.join", ("pieces", Counted(takes.Select(t => labels[t])))));
                lines.Add(Message.Of("step.strip.cut", ("copies", recipe.Makes.Length), ("length", Length.Max(recipe.Width, recipe.Height))));
                break;
            case "lengthwise-strip":
                lines.Add(Message.Of("step.lengthwise", ("piece", labels[takes[0]])));
                lines.Add(Message.Of("step.lengthwise.cut", ("length", Length.Max(recipe.Width, recipe.Height))));
                break;
            case "mitered":
                lines.Add(Message.Of("step.mitered.center", ("parts", Parts(recipe, numbers, labels).RemoveAt(0)), ("seam", seam)));
                lines.Add(Message.Of("step.mitered.corner", ("seam", seam)));
                break;
            case "set-in":
                lines.Add(Message.Of("step.set-in.order", ("parts", Parts(recipe, numbers, labels))));
                lines.Add(Message.Of("step.set-in.how", ("count", recipe.Verbs.OfType<SewIn>().Count(sewn => sewn.Lines.Length > 1)), ("seam", seam)));
                lines.Add(PressWords.OfSetIn(recipe));
                break;
            case "partial":
                lines.AddRange(PartialWords.Of(recipe, Parts(recipe, numbers, labels), step));
                break;
            case "half-square-triangle" or "setting-corner":
                lines.Add(Message.Of("step.triangle.once", ("piece", labels[takes[0]])));
                lines.AddRange(Alike(recipe, twins));
                break;
            case "quarter-square-triangle" or "setting-side":
                lines.Add(Message.Of("step.triangle.twice", ("piece", labels[takes[0]])));
                lines.AddRange(Alike(recipe, twins));
                break;
            case "cut-to-shape" or "cut-to-shape-handed":
                lines.Add(Message.Of("step.cut-to-shape", ("piece", labels[takes[0]]), ("seam", seam)));
                if (hands[takes[0]] is { } hand)
                {
                    lines.Add(hand);
                }

                break;
            case "square-on-point":
                lines.Add(Message.Of("step.on-point", ("piece", labels[takes[0]])));
                break;
            case "hourglass-two":
                lines.Add(
                    Message.Of(
                        "step.hourglass.first",
                        ("first", labels[takes[0]]),
                        ("second", labels[takes[1]]),
                        ("seam", seam),
                        ("toward", PressWords.Letter(recipe, letters[takes[0]], letters[takes[1]]) ?? "none")
                    )
                );
                lines.Add(
                    Message.Of(
                        "step.hourglass.second",
                        ("seam", seam),
                        ("toward", PressWords.Letter(recipe, letters[takes[0]], letters[takes[1]]) ?? "none")
                    )
                );
                break;
            // A block of one piece, whatever it is called.
            case "single" or "block" when recipe.Verbs.Length == 1 && takes.Length == 1:
                lines.Add(Message.Of("step.single", ("piece", labels[takes[0]])));
                break;
            default:
                lines.AddRange(PressWords.OfTurns(recipe));
                lines.Add(Message.Of("step.join", ("parts", Parts(recipe, numbers, labels)), ("count", recipe.Picture.Parts.Length), ("way", LyingOf(recipe).Way)));
                // Pinned before it is sewn, pressed after.
                lines.AddRange(PressWords.OfCrossings(crossings, step, named: !LyingOf(recipe).Turned));
                lines.AddRange(PressWords.OfJoin(recipe, Parts(recipe, numbers, labels)));
                if (recipe.Kind == "border-run")
                {
                    lines.Add(Message.Of("step.border-run", ("length", Length.Max(recipe.Width, recipe.Height))));
                }

                break;
        }

        if (recipe.Verbs.Any(v => v is Trim { Counted: true }) && Rounds.Last(recipe) is { } strip)
        {
            lines.Add(
                Message.Of("step.trim.round", ("line", strip + seam), ("sides", takes.Length), ("width", recipe.Width), ("height", recipe.Height))
            );
        }
        else if (recipe.Verbs.Any(v => v is Trim { Counted: true }))
        {
            var rule =
                recipe.Kind is "goose-flip" or "goose-four" or "snowball" ? "step.trim.goose"
                : recipe.Makes.Length > 1 || recipe.Kind == "half-square-one" ? "step.trim.unit"
                : recipe.Kind is "joined" or "block" or "set-in" ? "step.trim.points"
                : "step.trim.center";
            lines.Add(Message.Of(rule, ("width", recipe.Width), ("height", recipe.Height), ("seam", seam)));
        }
        else if (recipe.Outline is null)
        {
            lines.Add(Message.Of("step.size", ("width", recipe.Width), ("height", recipe.Height)));
        }

        return lines.ToImmutable();
    }

    private static IEnumerable<Message> Alike(Recipe recipe, ILookup<(string Kind, PathId Piece), int> twins)
    {
        int[] steps = [.. twins[(recipe.Kind, recipe.Verbs.OfType<Take>().First().Piece)]];
        if (steps.Length > 1)
        {
            yield return Message.Of("step.triangle.alike", ("steps", (ImmutableArray<Message>)[.. steps.Select(n => Message.Of("step.part", ("number", n)))]));
        }
    }

    /// <summary>How far apart a strip set is cut across: what its second copy is moved by, so as to lie like the first.</summary>
    private static Length Segment(Recipe recipe) =>
        Length.Inches(-recipe.Verbs.OfType<Turn>().First(t => t.On == recipe.Makes[1]).Motion.DY.One);

    /// <summary>"A1, step 2, A1", in the order of sewing.</summary>
    private static ImmutableArray<Message> Parts(Recipe recipe, Dictionary<PathId, int> numbers, Dictionary<PathId, string> labels) =>
        [
            .. recipe.Picture.Parts.Select(p =>
                labels.TryGetValue(p.Of, out var label)
                    ? Message.Plain(label)
                    : Message.Of("step.part", ("number", numbers[p.Of]))
            ),
        ];

    /// <summary>"60 of A1 and 120 of step 2", for all runs.</summary>
    private static ImmutableArray<Message> Uses(Recipe recipe, Dictionary<PathId, int> numbers, Dictionary<PathId, string> labels) =>
        [
            .. recipe
                .Verbs.Select(verb => verb is Take take ? take.Piece : verb is Use use ? use.Unit : (PathId?)null)
                .OfType<PathId>()
                .GroupBy(id => id)
                .Select(same =>
                    labels.TryGetValue(same.Key, out var label)
                        ? Message.Of("step.counted", ("count", same.Count() * recipe.Runs), ("label", label))
                        : Message.Of("step.counted.step", ("count", same.Count() * recipe.Runs), ("number", numbers[same.Key]))
                ),
        ];

    /// <summary>
    /// Which way the parts follow one another in the drawing, and whether that lies otherwise than the unit: a long column
    /// is laid on its side, and a slanting row leveled.
    /// </summary>
    private static (string Way, bool Turned) LyingOf(Recipe recipe)
    {
        var boxes = recipe.Picture.Parts.Select(part => part.Outline.Bounds()).ToArray();
        if (boxes.Length < 2)
        {
            return ("right", false);
        }

        var run = new Point(boxes[^1].Low.X + boxes[^1].High.X - boxes[0].Low.X - boxes[0].High.X, boxes[^1].Low.Y + boxes[^1].High.Y - boxes[0].Low.Y - boxes[0].High.Y);
        Surd width = boxes.Max(b => b.High.X) - boxes.Min(b => b.Low.X),
            height = boxes.Max(b => b.High.Y) - boxes.Min(b => b.Low.Y);
        return !run.X.IsZero ? ("right", !run.Y.IsZero)
            : height > LongColumn * width ? ("right", true)
            : ("up", false);
    }

    /// <summary>A column more than this many times as high as wide is drawn lying; the words follow the drawing.</summary>
    public const int LongColumn = 3;

    /// <summary>"4 of A2 and 1 of A3".</summary>
    private static ImmutableArray<Message> Counted(IEnumerable<string> labels) =>
        [.. labels.GroupBy(l => l).Select(g => Message.Of("step.counted", ("count", g.Count()), ("label", g.Key)))];
}
