using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>One run of one recipe, followed verb by verb.</summary>
internal sealed class RecipeTrace(
    Recipe recipe,
    Dictionary<PathId, CutPiece> pieces,
    Dictionary<PathId, UnitTrace> units,
    Func<string, double> lightness,
    double seam
)
{
    private readonly Dictionary<string, TracedLayers> table = new(StringComparer.Ordinal);
    private readonly Dictionary<SeamId, SeamSides> sides = [];
    private readonly List<Crossing> crossings = [];
    private readonly List<double> sewn = [];
    private readonly List<SetInSeam> setIn = [];
    private readonly List<TracedSeam> swirled = [];

    // Seams sewn in part, by register, with the middle of the part that hangs on them.
    private readonly Dictionary<string, (SewPart Sew, Spot Part)> partials = new(StringComparer.Ordinal);
    private int points;

    // The part that was joined last in a register, and along what: in a row the next seam lies beside it, whatever came before.
    private readonly Dictionary<string, (Spot Step, TracedCloth Part)> last = new(StringComparer.Ordinal);

    public UnitTrace Run()
    {
        for (var i = 0; i < recipe.Verbs.Length; i++)
        {
            Do(recipe.Verbs[i], i);
        }

        var copies = recipe.Makes.Select(register => table[register].Bottom).ToArray();
        ImmutableArray<TracedSeam> own = [.. Own(copies[0])];
        return new(
            own,
            sides.ToImmutableDictionary(),
            [.. crossings],
            [.. copies.Skip(1).SelectMany(copy => Ties(own, copy))],
            [.. sewn]
        )
        {
            Points = points,
            SetIn = [.. setIn],
            Swirled = [.. swirled],
            Part = copies[0].AsPart(seam) with { Blocks = copies[0].Blocks || recipe.Shows is not null },
        };
    }

    private void Do(Verb verb, int index)
    {
        switch (verb)
        {
            case Take take:
                table[take.Into] = TracedLayers.Of(Piece(pieces[take.Piece]).Moved(Pose.Of(take.Motion)));
                break;
            case Use use:
                table[use.Into] = TracedLayers.Of(units[use.Unit].Part!.Moved(Pose.Of(use.Motion)));
                break;
            case Turn turn:
                table[turn.On] = table[turn.On].Moved(Pose.Of(turn.Motion));
                break;
            case Lay lay:
                table.Remove(lay.Bottom, out var bottom);
                table.Remove(lay.Top, out var top);
                table[lay.Into] = new(bottom!.Bottom, top!.Bottom.Moved(Pose.Of(lay.Motion)), []);
                break;
            case Sew sew:
                Stitch(table[sew.On], SpotLine.Of(sew.Line));
                break;
            case SewIn sew:
                SetIn(sew, index);
                break;
            case SewPart sew:
                SewInPart(sew);
                break;
            case CloseSeam close:
                Close(index, partials[close.On]);
                break;
            case CutAlong cut:
                Cut(cut);
                break;
            case Press press:
                table[press.On] = TracedLayers.Of(Open(press.On, table[press.On], new(recipe.Id, index)));
                break;
            case Trim trim:
                table[trim.On] = TracedLayers.Of(Trimmed(table[trim.On].Bottom, trim.Rectangle));
                break;
        }
    }

    private TracedCloth Piece(CutPiece piece)
    {
        double width = piece.Width.InInches.ToDouble(),
            height = piece.Height.InInches.ToDouble();
        return new([new(0, 0), new(width, 0), new(width, height), new(0, height)], [], 1, false, lightness(piece.Role), width * height);
    }

    private void Stitch(TracedLayers layers, SpotLine line)
    {
        layers.Sewn.Add(line);
        if (ConvexOutline.Chord(layers.Bottom.Outline, line) is { } b && ConvexOutline.Chord(layers.Top!.Outline, line) is { } t)
        {
            sewn.Add(Math.Max(0, Math.Min(b.High, t.High) - Math.Max(b.Low, t.Low)));
        }
    }

    private void SetIn(SewIn sew, int index)
    {
        table.Remove(sew.Part, out var part);
        foreach (var (side, line) in sew.Lines.Index())
        {
            Spot from = Spot.Of(line.From),
                to = Spot.Of(line.To);
            sewn.Add((to - from).Length);
            setIn.Add(new(index, side, from, to, (to - from).Unit.Left));
        }

        table[sew.On] = TracedLayers.Of(table[sew.On].Bottom.Beside(part!.Bottom));
    }

    private void SewInPart(SewPart sew)
    {
        table.Remove(sew.Part, out var part);
        partials[sew.On] = (sew, part!.Bottom.Middle);
        sewn.Add((Spot.Of(sew.Stop) - Spot.Of(sew.Line.From)).Length);
        table[sew.On] = TracedLayers.Of(table[sew.On].Bottom.Beside(part.Bottom));
    }

    /// <summary>The seam that was sewn in part is pressed when it is closed, toward the part or away from it.</summary>
    private void Close(int index, (SewPart Sew, Spot Part) partial)
    {
        Spot from = Spot.Of(partial.Sew.Line.From),
            to = Spot.Of(partial.Sew.Line.To);
        sewn.Add((to - Spot.Of(partial.Sew.Stop)).Length);
        var left = (to - from).Unit.Left;
        setIn.Add(new(index, 0, from, to, Spot.Dot(left, partial.Part - from) > 0 ? left : left * -1));
    }

    private void Cut(CutAlong cut)
    {
        table.Remove(cut.On, out var whole);
        var line = SpotLine.Of(cut.Line);
        if (cut.Left is not null)
        {
            table[cut.Left] = whole!.Clip(line, 1);
        }

        if (cut.Right is not null)
        {
            table[cut.Right] = whole!.Clip(line, -1);
        }
    }

    private static TracedCloth Trimmed(TracedCloth cloth, Polygon rectangle)
    {
        var corners = rectangle.CounterClockwise().Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            cloth = cloth.Clip(SpotLine.Of(new(corners[i], corners[(i + 1) % corners.Length])), 1);
        }

        return cloth;
    }

    private TracedCloth Open(string register, TracedLayers layers, SeamId id)
    {
        var line = layers.Sewn[^1];
        var side = ConvexOutline.Body(layers.Bottom.Outline, line);
        var bottom = layers.Bottom.Clip(line, side);
        var top = layers.Top!.Clip(line, side).Moved(Pose.MirrorIn(line));
        var (b, t) = (ConvexOutline.Chord(bottom.Outline, line) ?? default, ConvexOutline.Chord(top.Outline, line) ?? default);
        double low = Math.Max(b.Low, t.Low),
            high = Math.Min(b.High, t.High);
        var own = new TracedSeam(id, line.At(low), line.At(high), line.Step.Left * -side);
        var isSwirled = recipe.Verbs[id.Verb] is Press { Toward: PressToward.Swirled };
        SeamEnd[] below = [.. SeamEnd.On(bottom, line, low, high)],
            above = [.. SeamEnd.On(top, line, low, high)];
        crossings.AddRange(SeamEnd.Meetings(id, line, below, above));
        points += below.Concat(above).Where(end => end.Slants(line)).DistinctBy(end => Math.Round(end.Along, 6)).Count();
        var beside = last.TryGetValue(register, out var before) && Math.Abs(Spot.Cross(before.Step, line.Step)) < Spot.Near ? before.Part : bottom;
        last[register] = (line.Step, top);
        if (isSwirled && below.Length > 0)
        {
            swirled.AddRange(Halves(below[0], line, low, high));
            var both = bottom.Beside(top);
            both.Seams.AddRange(swirled);
            return both;
        }

        sides[id] = new(beside.Side(below.Length), top.Side(above.Length));
        return bottom.With(top, own);
    }

    /// <summary>A seam parted where another ends on it, both halves turning round that place the way the other does.</summary>
    private static IEnumerable<TracedSeam> Halves(SeamEnd end, SpotLine line, double low, double high)
    {
        // The other seam leaves the line to one side; its top side lies forward along the line or back.
        var turn = Math.Sign(Spot.Cross(end.Away, line.Step * end.TowardTop));
        var middle = line.At(end.Along);
        yield return new(end.Seam, middle, line.At(high), line.Step.Left * turn);
        yield return new(end.Seam, line.At(low), middle, line.Step.Left * -turn);
    }

    private IEnumerable<TracedSeam> Own(TracedCloth copy) => copy.Seams.Where(s => s.Seam.Recipe == recipe.Id);

    private IEnumerable<SeamTie> Ties(ImmutableArray<TracedSeam> first, TracedCloth copy) =>
        from other in Own(copy)
        from one in first
        where other.Seam != one.Seam && (one.From.IsAt(other.From) && one.To.IsAt(other.To) || one.From.IsAt(other.To) && one.To.IsAt(other.From))
        select new SeamTie(one.Seam, other.Seam, Spot.Dot(one.TowardTop, other.TowardTop) > 0);
}
