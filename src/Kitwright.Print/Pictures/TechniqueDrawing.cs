using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>
/// A unit made by a technique: its pieces as cut, with the lines to sew (dashed) and to cut (full) on the piece that
/// lies on top, then the finished unit with an arrow at each seam.
/// </summary>
internal sealed class TechniqueDrawing(StepPicture step, Recipe recipe)
{
    private const double Gap = 16;
    private const double ToResult = 34;
    private const double WordsDown = 14;
    private const double ArrowLength = 13;

    /// <summary>One class of pieces with the lines on it, in its own coordinates.</summary>
    private sealed record Ingredient(CutPiece Piece, int Count, ImmutableArray<(Line Line, bool Sewn)> Lines)
    {
        public double Width => Piece.Width.InInches.ToDouble();
        public double Height => Piece.Height.InInches.ToDouble();
    }

    public Picture Fit(double width, double height, double mostScale)
    {
        var ingredients = Ingredients();
        var finished = UnitDrawing.Size(step.Plan, recipe);
        var fixedWidth = (Gap * (ingredients.Length - 1)) + ToResult;
        var scale = Math.Min(
            mostScale,
            Math.Min(
                (width - fixedWidth) / (ingredients.Sum(i => i.Width) + finished.Width),
                (height - WordsDown) / Math.Max(ingredients.Max(i => i.Height), finished.Height)
            )
        );
        var deep = Math.Max(ingredients.Max(i => i.Height), finished.Height) * scale;
        var nodes = ImmutableArray.CreateBuilder<Node>();
        double x = 0;
        foreach (var ingredient in ingredients)
        {
            var top = (deep - (ingredient.Height * scale)) / 2;
            nodes.Add(Group.At(x, top, Piece(ingredient, scale)));
            var word = SetText.Of(WordOf(ingredient), Look.Label);
            nodes.Add(new TextLine(word, new(x + (((ingredient.Width * scale) - word.Width) / 2), deep - top + 11)));
            x += (ingredient.Width * scale) + Gap;
        }

        x -= Gap;
        nodes.Add(Arrow.Of(new(x + 9, deep / 2), new(x + ToResult - 9, deep / 2), both: false));
        x += ToResult;
        nodes.Add(Group.At(x, (deep - (finished.Height * scale)) / 2, Result(scale)));
        return new(new Group(nodes.ToImmutable()), x + (finished.Width * scale), deep + WordsDown);
    }

    private string WordOf(Ingredient ingredient) =>
        ingredient.Count == 1
            ? step.Word(ingredient.Piece.Id)
            : string.Create(CultureInfo.InvariantCulture, $"{ingredient.Count} × {step.Word(ingredient.Piece.Id)}");

    private Group Piece(Ingredient ingredient, double scale)
    {
        var toPage = new Affine(scale, 0, 0, -scale, 0, ingredient.Height * scale);
        var cloth = new Shape(Outline.Rectangle(new(0, 0, ingredient.Width, ingredient.Height)), step.Fill(ingredient.Piece.Role), Look.Edge);
        var lines = ingredient.Lines.SelectMany(line =>
        {
            var ends = Across(ingredient, line.Line).ToArray();
            return ends.Length < 2 ? [] : Both(toPage.Apply(ends[0]), toPage.Apply(ends[^1]), line.Sewn);
        });
        return new([new Group([cloth]) { Transform = toPage, Id = ingredient.Piece.Id }, .. lines]);
    }

    // Paper under ink, so that a line shows on any fabric.
    private static Node[] Both(Place from, Place to, bool sewn) =>
        [
            new Shape(Outline.Line(from, to), null, new(Look.Paper, 1.8)),
            new Shape(Outline.Line(from, to), null, sewn ? new(Look.Ink, 0.8, 2.5) : new(Look.Ink, 0.8)),
        ];

    /// <summary>Where a line enters and leaves the piece.</summary>
    private static IEnumerable<Place> Across(Ingredient ingredient, Line line)
    {
        Place from = PressMarks.PlaceOf(line.From),
            step = PressMarks.PlaceOf(line.To) - from;
        var hits = new List<Place>();
        if (step.X != 0)
        {
            hits.Add(from + (step * (-from.X / step.X)));
            hits.Add(from + (step * ((ingredient.Width - from.X) / step.X)));
        }

        if (step.Y != 0)
        {
            hits.Add(from + (step * (-from.Y / step.Y)));
            hits.Add(from + (step * ((ingredient.Height - from.Y) / step.Y)));
        }

        const double Near = 1e-6;
        return hits
            .Where(p => p.X > -Near && p.X < ingredient.Width + Near && p.Y > -Near && p.Y < ingredient.Height + Near)
            .OrderBy(p => p.X)
            .ThenBy(p => p.Y);
    }

    private Group Result(double scale)
    {
        var finished = UnitDrawing.Size(step.Plan, recipe);
        var unit = new Group([UnitDrawing.Of(step.Plan, recipe, step.Fill, Look.Seam)]) { Transform = Affine.Scale(scale, scale) };
        var toPage = new Affine(scale, 0, 0, -scale, 0, finished.Height * scale);
        var arrows = PressMarks
            .Of(step.Seams, recipe)
            .Select(Node (mark) =>
            {
                var at = toPage.Apply(mark.At);
                var toward = new Place(mark.Toward.X, -mark.Toward.Y) * (ArrowLength / 2);
                return Arrow.Of(at - toward, at + toward, mark.Open);
            });
        return new([unit, .. arrows]);
    }

    /// <summary>Each class once, as it is taken first, with what is sewn and cut along while it lies on top.</summary>
    private ImmutableArray<Ingredient> Ingredients()
    {
        var takes = recipe.Verbs.OfType<Take>().ToArray();
        var lines = LinesByRegister();
        return
        [
            .. takes
                .GroupBy(take => take.Piece)
                .Select(same => new Ingredient(step.PieceOf(same.Key)!, same.Count(), lines.GetValueOrDefault(same.First().Into, []))),
        ];
    }

    /// <summary>What is sewn and cut along each piece, in the piece's own coordinates, by the register it was taken into.</summary>
    private Dictionary<string, ImmutableArray<(Line, bool)>> LinesByRegister()
    {
        var lines = new Dictionary<string, ImmutableArray<(Line, bool)>>(StringComparer.Ordinal);
        // The piece that lies on top in a register, and how it came to lie so.
        var onTop = new Dictionary<string, (string Piece, Motion Pose)>(StringComparer.Ordinal);
        foreach (var verb in recipe.Verbs)
        {
            switch (verb)
            {
                case Take take:
                    onTop[take.Into] = (take.Into, take.Motion);
                    break;
                case Turn turn when onTop.TryGetValue(turn.On, out var turned):
                    onTop[turn.On] = (turned.Piece, turned.Pose.Then(turn.Motion));
                    break;
                case Lay lay when onTop.TryGetValue(lay.Top, out var laid):
                    onTop[lay.Into] = (laid.Piece, laid.Pose.Then(lay.Motion));
                    break;
                case Sew sew when onTop.TryGetValue(sew.On, out var sewn):
                    Add(sewn.Piece, sewn.Pose.Inverse().Apply(sew.Line), sewn: true);
                    break;
                case CutAlong cut when onTop.Remove(cut.On, out var divided):
                    Divide(cut, divided);
                    break;
                case Press press:
                    onTop.Remove(press.On);
                    break;
            }
        }

        return lines;

        // What falls off is not a cut that divides the piece.
        void Divide(CutAlong cut, (string Piece, Motion Pose) top)
        {
            if (cut is { Left: { } left, Right: { } right })
            {
                Add(top.Piece, top.Pose.Inverse().Apply(cut.Line), sewn: false);
                onTop[left] = onTop[right] = top;
            }
        }

        void Add(string piece, Line line, bool sewn) => lines[piece] = lines.GetValueOrDefault(piece, []).Add((line, sewn));
    }
}
