using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;
using Kitwright.Sewing;

namespace Kitwright.Print.Pictures;

/// <summary>
/// A unit that is joined from parts in a row: the parts pulled apart, a word at each, and in each gap an arrow the way
/// its seam is pressed. A long column is laid on its side, a slanting row level.
/// </summary>
internal sealed class ExplodedDrawing
{
    private const double Gap = 13;
    private const double ArrowLength = 11;
    private const double WordsAside = 7;

    /// <summary>Inches within which two centers are level; no patch is so small.</summary>
    private const double Near = 0.01;

    /// <summary>Inches from a seam to a place that is surely in the part beside it.</summary>
    private const double Beside = 0.05;

    /// <summary>Places looked at all round one, to see which parts meet there.</summary>
    private const int LooksRound = 16;

    private readonly StepPicture step;
    private readonly Recipe recipe;

    // From the unit's own coordinates to those of the drawing before it is scaled: inches, y up, from the origin.
    private readonly Affine pose;
    private readonly Outline[] outlines;
    private readonly Box[] extents;
    private readonly Box finished;
    private readonly SetText[] words;

    // The way in which the parts are pulled apart, of length one, y down: to the right, down, or slanting.
    private readonly Place away;

    public ExplodedDrawing(StepPicture step, Recipe recipe)
    {
        this.step = step;
        this.recipe = recipe;
        Outline[] own = [.. recipe.Picture.Parts.Select(part => Outline.Of(part.Outline))];
        pose = PoseOf(own);
        outlines = [.. own.Select(outline => outline.Moved(pose))];
        extents = [.. outlines.Select(outline => outline.Bounds())];
        finished = Together(outlines);
        words = [.. recipe.Picture.Parts.Select(part => SetText.Of(step.Word(part.Of), Look.Label))];
        var run = RunOf(outlines);
        away = Math.Abs(run.X) < Near ? new(0, 1) : new Place(run.X, -run.Y) * Math.Sign(run.X);
    }

    // Parts that whirl round a center are pulled away from it, each to its own side.
    private bool Around => recipe.Verbs.Any(verb => verb is SewPart);

    private bool Across => Math.Abs(away.Y) < Near;
    private bool Down => Math.Abs(away.X) < Near;

    public Picture Fit(double width, double height, double mostScale)
    {
        if (Around)
        {
            return FitAround(width, height, mostScale);
        }

        // Words below take two lines at most, as a rule; beside, as much as the longest; on the parts, nothing.
        double gaps = Gap * (extents.Length - 1),
            aside = Down ? words.Max(word => word.Width) + WordsAside : 0,
            below = Across ? (2 * Look.Label.Leading) + 3 : 0;
        double gapsAcross = gaps * away.X,
            gapsDown = gaps * Math.Abs(away.Y);
        var scale = Math.Min(
            mostScale,
            Math.Min((width - gapsAcross - aside) / finished.Width, (height - gapsDown - below) / finished.Height)
        );
        double wide = (finished.Width * scale) + gapsAcross,
            high = (finished.Height * scale) + gapsDown;
        // Where the parts run up to the right, the first of them stands lowest.
        var toPage = new Affine(scale, 0, 0, -scale, 0, (finished.Height * scale) + (away.Y < 0 ? gapsDown : 0));
        var parts = new Group([.. Parts(toPage), .. Arrows(toPage), .. Diamonds(toPage)]);
        if (Across)
        {
            var lines = WordsBelow(toPage, high).ToArray();
            return new(new Group([parts, .. lines]), wide, lines.Max(line => line.Start.Y) + 3);
        }

        return Down
            ? new(new Group([parts, .. WordsBeside(toPage, wide)]), wide + aside, high)
            : new(new Group([parts, .. WordsOn(toPage)]), wide, high);
    }

    private Picture FitAround(double width, double height, double mostScale)
    {
        const double Gaps = 2 * Gap;
        var scale = Math.Min(mostScale, Math.Min((width - Gaps) / finished.Width, (height - Gaps) / finished.Height));
        var toPage = new Affine(scale, 0, 0, -scale, Gap, (finished.Height * scale) + Gap);
        return new(
            new Group([.. Parts(toPage), .. SewnInPart(toPage), .. Arrows(toPage), .. WordsOn(toPage)]),
            (finished.Width * scale) + Gaps,
            (finished.Height * scale) + Gaps
        );
    }

    /// <summary>The stitches of the partial seam as they are sewn first, with a bar where they stop.</summary>
    private IEnumerable<Node> SewnInPart(Affine toPage)
    {
        const double HalfBar = 4;
        var sewn = recipe.Verbs.OfType<SewPart>().First();
        Affine center = Shift(0),
            first = Shift(1);
        var aside = new Place((center.E + first.E) / 2, (center.F + first.F) / 2);
        Place from = toPage.Apply(pose.Apply(PressMarks.PlaceOf(sewn.Line.From))) + aside,
            stop = toPage.Apply(pose.Apply(PressMarks.PlaceOf(sewn.Stop))) + aside;
        var step = stop - from;
        var across = new Place(-step.Y, step.X) * (HalfBar / Math.Sqrt((step.X * step.X) + (step.Y * step.Y)));
        yield return new Shape(Outline.Line(from, stop), null, Look.Dashes);
        yield return new Shape(Outline.Line(stop - across, stop + across), null, Look.Edge);
    }

    /// <summary>A long column is laid on its side, and a slanting row level; a whole top stands as it hangs.</summary>
    private Affine PoseOf(Outline[] parts)
    {
        var size = Together(parts);
        var along = RunOf(parts);
        var slants = Math.Abs(along.X) > Near && Math.Abs(along.Y) > Near;
        var turned = Affine.Identity;
        if (size.Height > Directions.LongColumn * size.Width && !slants)
        {
            turned = new(0, -1, 1, 0, 0, 0);
        }
        else if (slants && recipe.Outline is not null)
        {
            // The first part on the left, as its words have it.
            turned = new(along.X, -along.Y, along.Y, along.X, 0, 0);
        }

        var box = Together([.. parts.Select(part => part.Moved(turned))]);
        return turned.Then(Affine.Shift(-box.Left, -box.Top));
    }

    private static Box Together(Outline[] outlines) => new Outline([.. outlines.SelectMany(outline => outline.Contours)]).Bounds();

    /// <summary>The way from the first part to the last, of length one.</summary>
    /// <remarks>The middle of an end triangle lies beside the row's own line, so the way is rounded to 15 degrees.</remarks>
    private static Place RunOf(Outline[] parts)
    {
        const double Step = Math.PI / 12;
        var run = parts[^1].Bounds().Center - parts[0].Bounds().Center;
        var angle = Math.Round(Math.Atan2(run.Y, run.X) / Step) * Step;
        return new(Math.Cos(angle), Math.Sin(angle));
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
        var marks = PressMarks.Of(step.Seams, recipe);
        for (var i = 0; i < marks.Length && i + 1 < extents.Length; i++)
        {
            var mark = marks[i].Moved(pose);
            // The seam is drawn in the middle of the gap between the parts that it joins.
            Affine one = Shift(i),
                other = Shift(i + 1);
            yield return ArrowOf(mark, new((one.E + other.E) / 2, (one.F + other.F) / 2));
        }

        foreach (var mark in PressMarks.OfSwirled(step.Seams, recipe, step.Plan).Select(mark => mark.Moved(pose)))
        {
            yield return ArrowOf(mark, new((Shift(0).E + Shift(1).E) / 2, (Shift(0).F + Shift(1).F) / 2));
        }

        // What is set in lies anywhere: the seam is drawn half way between the parts on its two sides.
        foreach (var mark in PressMarks.OfSetIn(step.Seams, recipe).Select(mark => mark.Moved(pose)))
        {
            int one = PartAt(mark.At + (mark.Toward * Beside)),
                other = PartAt(mark.At - (mark.Toward * Beside));
            if (one >= 0 && other >= 0)
            {
                yield return ArrowOf(mark, new((Shift(one).E + Shift(other).E) / 2, (Shift(one).F + Shift(other).F) / 2));
            }
        }

        int PartAt(Place place) => Array.FindIndex(outlines, outline => outline.Holds(place));

        Node ArrowOf(PressMark mark, Place shift)
        {
            var at = toPage.Apply(mark.At) + shift;
            var toward = new Place(mark.Toward.X, -mark.Toward.Y) * (ArrowLength / 2);
            return Arrow.Of(at - toward, at + toward, mark.Open);
        }
    }

    /// <summary>A diamond where seams meet that cannot nest, amid the parts that meet there.</summary>
    private IEnumerable<Node> Diamonds(Affine toPage)
    {
        foreach (var spot in step.Unnested(recipe))
        {
            var at = pose.Apply(new Place(spot.X, spot.Y));
            var round = Enumerable.Range(0, LooksRound).Select(i => Math.SinCos(2 * Math.PI * i / LooksRound)).Select(way => at + (new Place(way.Cos, way.Sin) * Beside)).ToArray();
            Affine[] shifts = [.. Enumerable.Range(0, outlines.Length).Where(part => round.Any(outlines[part].Holds)).Select(Shift)];
            var aside = shifts.Length == 0 ? default : new Place(shifts.Average(shift => shift.E), shifts.Average(shift => shift.F));
            yield return Diamond.At(toPage.Apply(at) + aside);
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

    // Parts of one height, such as the strips round a center, would have their words on one another: each keeps a line to itself.
    private IEnumerable<TextLine> WordsBeside(Affine toPage, double wide)
    {
        var free = double.NegativeInfinity;
        foreach (var (word, middle) in words.Select((word, i) => (word, Middle: toPage.Apply(extents[i].Center).Y + Shift(i).F)).OrderBy(x => x.Middle))
        {
            var at = Math.Max(middle + (Look.Label.CapHeight / 2), free);
            free = at + Look.Label.Leading;
            yield return new(word, new(wide + WordsAside, at));
        }
    }

    // Parts that run aslant leave no margin for words: they stand on the parts.
    private IEnumerable<Node> WordsOn(Affine toPage) =>
        words.Select((word, i) => Chip.Of(word.Text, Look.Label, Shift(i).Apply(toPage.Apply(extents[i].Center))).Drawing);

    // Seen on the page, parts follow one another from the left or from the top.
    private Affine Shift(int index)
    {
        if (Around)
        {
            var apart = extents[index].Center - extents[0].Center;
            return index == 0 ? Affine.Identity
                : Math.Abs(apart.X) > Math.Abs(apart.Y) ? Affine.Shift(Gap * Math.Sign(apart.X), 0)
                : Affine.Shift(0, -Gap * Math.Sign(apart.Y));
        }

        double Along(Box box) => (box.Center.X * away.X) - (box.Center.Y * away.Y);
        var mine = Along(extents[index]);
        var before = Gap * extents.Count(other => Along(other) < mine - Near);
        return Affine.Shift(away.X * before, away.Y * before);
    }
}
