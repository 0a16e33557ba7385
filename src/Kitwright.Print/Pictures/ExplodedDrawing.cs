using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>
/// A unit that is joined from parts in a row: the parts pulled apart, a word at each, and in each gap an arrow the way
/// its seam is pressed. A long column is laid on its side.
/// </summary>
internal sealed class ExplodedDrawing
{
    private const double Gap = 13;
    private const double ArrowLength = 11;
    private const double WordsAside = 7;

    /// <summary>A unit more than this many times as high as wide is drawn lying.</summary>
    private const double Slender = 3;

    private readonly StepPicture step;
    private readonly Recipe recipe;

    // From the unit's own coordinates to those of the drawing before it is scaled: inches, y up.
    private readonly Affine pose;
    private readonly Box finished;
    private readonly Outline[] outlines;
    private readonly Box[] extents;
    private readonly SetText[] words;
    private readonly bool across;

    public ExplodedDrawing(StepPicture step, Recipe recipe)
    {
        this.step = step;
        this.recipe = recipe;
        var size = UnitDrawing.Size(step.Plan, recipe);
        pose = size.Height > Slender * size.Width ? new(0, -1, 1, 0, 0, size.Width) : Affine.Identity;
        finished = Outline.Rectangle(size).Moved(pose).Bounds();
        outlines = [.. recipe.Picture.Parts.Select(part => Outline.Of(part.Outline).Moved(pose))];
        extents = [.. outlines.Select(outline => outline.Bounds())];
        words = [.. recipe.Picture.Parts.Select(part => SetText.Of(step.Word(part.Of), Look.Label))];
        across = Math.Abs(extents[0].Center.X - extents[^1].Center.X) > Math.Abs(extents[0].Center.Y - extents[^1].Center.Y);
    }

    public Picture Fit(double width, double height, double mostScale)
    {
        // Words below take two lines at most, as a rule; beside, as much as the longest.
        double gaps = Gap * (extents.Length - 1),
            aside = words.Max(word => word.Width) + WordsAside,
            below = (2 * Look.Label.Leading) + 3;
        double roomAcross = across ? width - gaps : width - aside,
            roomDown = across ? height - below : height - gaps;
        var scale = Math.Min(mostScale, Math.Min(roomAcross / finished.Width, roomDown / finished.Height));
        double wide = finished.Width * scale,
            high = finished.Height * scale;
        var toPage = new Affine(scale, 0, 0, -scale, 0, high);
        var parts = new Group([.. Parts(toPage), .. Arrows(toPage)]);
        if (!across)
        {
            return new(new Group([parts, .. WordsBeside(toPage, wide)]), wide + aside, high + gaps);
        }

        var lines = WordsBelow(toPage, high).ToArray();
        var depth = lines.Max(line => line.Start.Y) + 3;
        return new(new Group([parts, .. lines]), wide + gaps, depth);
    }

    private IEnumerable<Node> Parts(Affine toPage)
    {
        var inParts = UnitDrawing.Patches(step.Plan, recipe).ToLookup(patch => IndexOf(patch.Shape), patch => (patch.Role, patch.Shape));
        return recipe.Picture.Parts.Select(Node (part, index) => new Group(
            [new Group([QuiltPicture.Roles(inParts[index], step.Fill, Look.Seam)]) { Transform = pose.Then(toPage) }]
        )
        {
            Id = part.Of,
            Transform = Shift(index),
        });
    }

    // Parts do not overlap, so one inner point decides: the corners' mean, for patches are convex or nearly so.
    private int IndexOf(Polygon shape)
    {
        var corners = shape.Corners.Select(corner => pose.Apply(PressMarks.PlaceOf(corner))).ToArray();
        var mean = new Place(corners.Average(corner => corner.X), corners.Average(corner => corner.Y));
        return Array.FindIndex(outlines, outline => outline.Holds(mean));
    }

    private IEnumerable<Node> Arrows(Affine toPage)
    {
        var marks = PressMarks.Of(step.Plan, recipe);
        for (var i = 0; i < marks.Length && i + 1 < extents.Length; i++)
        {
            var mark = marks[i].Moved(pose);
            // The seam is drawn in the middle of the gap between the parts that it joins.
            Affine one = Shift(i),
                other = Shift(i + 1);
            var at = toPage.Apply(mark.At) + new Place((one.E + other.E) / 2, (one.F + other.F) / 2);
            var toward = new Place(mark.Toward.X, -mark.Toward.Y) * (ArrowLength / 2);
            yield return Arrow.Of(at - toward, at + toward, mark.Open);
        }
    }

    // Words of narrow parts would run into one another: each goes to the first line where it has room.
    private IEnumerable<TextLine> WordsBelow(Affine toPage, double high)
    {
        var ends = new List<double>();
        foreach (var i in Enumerable.Range(0, words.Length).OrderBy(i => extents[i].Center.X))
        {
            var left = toPage.Apply(extents[i].Center).X + Shift(i).E - (words[i].Width / 2);
            var line = ends.FindIndex(end => end + 4 < left);
            if (line < 0)
            {
                line = ends.Count;
                ends.Add(0);
            }

            ends[line] = left + words[i].Width;
            yield return new(words[i], new(left, high + (Look.Label.Leading * (line + 1))));
        }
    }

    private IEnumerable<TextLine> WordsBeside(Affine toPage, double wide) =>
        words.Select((word, i) => new TextLine(
            word,
            new(wide + WordsAside, toPage.Apply(extents[i].Center).Y + Shift(i).F + (Look.Label.CapHeight / 2))
        ));

    // Seen on the page, parts follow one another from the left or from the top.
    private Affine Shift(int index) =>
        across
            ? Affine.Shift(Gap * extents.Count(other => other.Center.X < extents[index].Center.X), 0)
            : Affine.Shift(0, Gap * extents.Count(other => other.Center.Y > extents[index].Center.Y));
}
