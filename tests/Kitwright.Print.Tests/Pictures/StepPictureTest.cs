using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Pictures;
using Kitwright.Sewing;
using Kitwright.Words;

namespace Kitwright.Print.Tests.Pictures;

/// <summary>The arrows of a step say what its plan and its words say.</summary>
public sealed class StepPictureTest
{
    private static readonly QuiltPlan Plan = Demo.Plan(Demo.Quilt, 0);

    private static readonly StepPicture Pictures = new(Plan, role => new NamedPaint(role, Color.White), _ => "step 12");

    private static IEnumerable<(Node Node, Affine Transform)> All(Node node, Affine transform) =>
        node is Group group
            ? group.Nodes.SelectMany(child => All(child, group.Transform.Then(transform))).Prepend((node, transform))
            : [(node, transform)];

    private static (Place From, Place Tip)[] Arrows(Node drawing) =>
        [
            .. All(drawing, Affine.Identity)
                .Where(pair => pair.Node is Shape { Class: "press" })
                .Select(pair => ((Shape)pair.Node).Outline.Moved(pair.Transform).Contours[0])
                // The third corner is the tip; the last two are the two sides of the tail.
                .Select(contour => ((contour.Segments[^1].To + contour.Segments[^2].To) * 0.5, contour.Segments[1].To)),
        ];

    private static string? RoleAt(Node drawing, Place place) =>
        All(drawing, Affine.Identity)
            .Where(pair => pair.Node is Shape { FabricRole: not null })
            .Select(pair => ((Shape)pair.Node, Outline: ((Shape)pair.Node).Outline.Moved(pair.Transform)))
            .LastOrDefault(pair => pair.Outline.Holds(place))
            .Item1?.FabricRole;

    [Fact]
    public void AHalfSquareIsPressedTowardTheFabricThatItsWordsName()
    {
        foreach (var recipe in Plan.Sewing.Recipes.Where(r => r.Kind == "half-square-two"))
        {
            var words = string.Join(' ', Directions.Of(Plan).Single(s => s.Recipe == recipe.Id).Lines.Select(Catalog.English.Say));
            var letter = words[words.IndexOf("toward Fabric ", StringComparison.Ordinal) + "toward Fabric ".Length];
            var drawing = Pictures.Of(recipe, 300, 200).Drawing;
            // The first arrow leads from the pieces to the unit.
            var (from, tip) = Assert.Single(Arrows(drawing).Skip(1));
            var roles = Plan.Fabrics.Single(f => f.Letter == letter.ToString()).Roles;
            Assert.Contains(RoleAt(drawing, tip), roles);
            Assert.DoesNotContain(RoleAt(drawing, from), roles);
        }
    }

    [Fact]
    public void AGooseIsPressedOutTowardItsSky()
    {
        foreach (var recipe in Plan.Sewing.Recipes.Where(r => r.Kind == "goose-flip"))
        {
            var drawing = Pictures.Of(recipe, 300, 200).Drawing;
            var arrows = Arrows(drawing).Skip(1).ToArray();
            Assert.Equal(2, arrows.Length);
            var body = Plan.Pieces.Single(p => p.Id == recipe.Verbs.OfType<Take>().First().Piece).Role;
            Assert.All(arrows, arrow => Assert.Equal(body, RoleAt(drawing, arrow.From)));
            Assert.All(arrows, arrow => Assert.NotEqual(body, RoleAt(drawing, arrow.Tip)));
        }
    }

    [Fact]
    public void EverySeamOfARowHasItsArrowInItsGap()
    {
        foreach (var recipe in Plan.Sewing.Recipes.Where(r => r.Picture.Parts.Length > 1))
        {
            var picture = Pictures.Of(recipe, 480, 220);
            var arrows = Arrows(picture.Drawing);
            Assert.Equal(recipe.Verbs.OfType<Press>().Count(), arrows.Length);
            Assert.All(arrows, arrow => Assert.Null(RoleAt(picture.Drawing, (arrow.From + arrow.Tip) * 0.5)));
        }
    }

    [Fact]
    public void ADrawingKeepsToItsSpace()
    {
        foreach (var recipe in Plan.Sewing.Recipes)
        {
            var picture = Pictures.Of(recipe, 250, 200);
            var extent = Extent.Of(picture.Drawing, Affine.Identity);
            Assert.True(picture.Width <= 250.001 && picture.Height <= 200.001, recipe.Id.Value);
            // Words under the outermost parts may stick out by half their width.
            Assert.InRange(extent.Left, -20, 250);
            Assert.InRange(extent.Right, 0, picture.Width + 20);
            // So may an arrow at the edge by half its length.
            Assert.InRange(extent.Top, -7, 200);
            Assert.InRange(extent.Bottom, 0, picture.Height + 5);
        }
    }

    /// <summary>The words send a person to the diamonds for the places where seams cannot nest: they must be there.</summary>
    [Fact]
    public void EachPlaceThatCannotNestHasADiamond()
    {
        var places = 0;
        var wrong = new List<string>();
        var quilts = BlockBook.All.Select(block => (NewQuilt.With(block, LengthUnit.Inch) with { Columns = 2, Rows = 2 }).Make().Value!);
        foreach (var quilt in quilts)
        {
            if (QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value is not { } plan)
            {
                continue;
            }

            var pictures = new StepPicture(plan, role => new NamedPaint(role, Color.White), _ => "step 12");
            foreach (var step in Directions.Of(plan))
            {
                var said = step.Lines.Where(line => line.Key == "press.cannot").Sum(line => (int)line.Slots["places"]);
                var drawing = pictures.Of(plan.Sewing.Recipes.Single(r => r.Id == step.Recipe), 300, 200).Drawing;
                var drawn = All(drawing, Affine.Identity).Count(pair => pair.Node is Shape { Class: "unnested" });
                if (said != drawn)
                {
                    wrong.Add($"{quilt.Name}, step {step.Number}: {said} said, {drawn} drawn");
                }

                places += said;
            }
        }

        Assert.Equal([], wrong);
        Assert.True(places > 0);
    }
}
