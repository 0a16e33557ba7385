using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>Strips joined end to end, with the cuts that make borders of them.</summary>
internal sealed class EndToEndDrawing(StepPicture step, Recipe recipe)
{
    private const double WordsDown = 14;

    /// <summary>The least height of the strip on paper, in points: a border of 83 in would be a hairline.</summary>
    private const double LeastHeight = 12;

    public Picture Fit(double width, double height, double mostScale)
    {
        var takes = recipe.Verbs.OfType<Take>().Select(take => Laid(take, step.PieceOf(take.Piece)!)).ToArray();
        var first = takes.Min(take => take.Left);
        var length = takes.Max(take => take.Left + take.Long) - first;
        var scale = Math.Min(mostScale, width / length);
        var deep = Math.Clamp(takes[0].Deep * scale, LeastHeight, height - WordsDown);
        var strips = takes.SelectMany(take =>
        {
            double left = (take.Left - first) * scale,
                wide = take.Long * scale;
            var word = SetText.Of(step.Word(take.Piece.Id), Look.Label);
            return new Node[]
            {
                new Shape(Outline.Rectangle(new(left, 0, wide, deep)), step.Fill(take.Piece.Role), Look.Edge) { Id = take.Piece.Id },
                new TextLine(word, new(left + ((wide - word.Width) / 2), deep + 11)),
            };
        });
        var cuts = recipe
            .Verbs.OfType<CutAlong>()
            .Select(cut => (cut.Line.From.X.ToDouble() - first) * scale)
            .Select(Node (x) => new Shape(Outline.Line(new(x, -3), new(x, deep + 3)), null, new(Look.Accent, 1, 2)));
        return new(new Group([.. strips, .. cuts]), width, deep + WordsDown);
    }

    // What is cut along the selvage is taken with a quarter turn: its height lies level.
    private static (CutPiece Piece, double Left, double Long, double Deep) Laid(Take take, CutPiece piece)
    {
        double width = piece.Width.InInches.ToDouble(),
            height = piece.Height.InInches.ToDouble(),
            at = take.Motion.DX.ToDouble();
        return take.Motion.XX.IsZero ? (piece, at - height, height, width) : (piece, at, width, height);
    }
}
