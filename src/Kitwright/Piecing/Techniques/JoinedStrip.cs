using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A border or sash longer than the cloth is wide: strips cut across the width, joined end to end with straight seams
/// into one, from which all copies are cut.
/// </summary>
/// <remarks>Each join takes two seam allowances (own arithmetic). Joins stay away from the ends of a copy.</remarks>
internal static class JoinedStrip
{
    public const string Kind = "joined-strip";

    /// <summary>No join may lie closer than this to the end of a copy: its allowance would be caught in the corner seam.</summary>
    private static readonly Length Clear = Length.Inch;

    /// <param name="stripLength">What one strip of the cloth holds.</param>
    /// <param name="copies">How many copies one joined strip gives.</param>
    public static Program Make(
        PieceBook book,
        Seams seams,
        Letters letters,
        string role,
        Surd finishedLength,
        Surd finishedWidth,
        Length stripLength,
        int copies
    )
    {
        Length length = seams.Rectangle(finishedLength),
            width = seams.Rectangle(finishedWidth);
        var lengths = StripLengths(length, stripLength, seams, copies);
        var pieces = lengths.Select(l => Strip(book, seams, role, l, width)).ToArray();
        Surd s = seams.Allowance;
        var verbs = new List<Verb> { new Take("strip", pieces[0].Id, Motion.Shift(-s, -s)) };
        var end = lengths[0] - seams.Allowance;
        for (var i = 1; i < pieces.Length; i++)
        {
            var seam = end - seams.Allowance;
            var line = new Line(new(seam, 0), new(seam, 1));
            verbs.Add(new Take("next", pieces[i].Id, Motion.Shift(seam - s, -s)));
            verbs.Add(new Lay("strip", "strip", "next", Motion.Reflect(line)));
            verbs.Add(new Sew("strip", line));
            verbs.Add(new Press("strip", PressToward.Open));
            end = seam - seams.Allowance + lengths[i];
        }

        return Finish(verbs, seams, letters, role, length, end, copies, pieces.Length);
    }

    private static Program Finish(
        List<Verb> verbs,
        Seams seams,
        Letters letters,
        string role,
        Length length,
        Length end,
        int copies,
        int strips
    )
    {
        var makes = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < copies; i++)
        {
            var register = $"copy{i + 1}";
            makes.Add(register);
            Length from = (length * i) - seams.Allowance,
                to = from + length;
            if (i < copies - 1 || to < end)
            {
                verbs.Add(new CutAlong("strip", new(new(to, 0), new(to, 1)), register, i < copies - 1 ? "strip" : null));
            }
            else
            {
                register = makes[^1] = "strip";
            }

            if (i > 0)
            {
                verbs.Add(new Turn(register, Motion.Shift(-(length * i), 0)));
            }
        }

        return new(
            Kind,
            [.. verbs],
            makes.ToImmutable(),
            Message.Of("unit.joined-strip", ("fabric", letters.Of(role)), ("strips", strips), ("copies", copies), ("length", length))
        );
    }

    /// <summary>Full strips and a shorter last one; the first gives way where a join would fall on the end of a copy.</summary>
    private static ImmutableArray<Length> StripLengths(Length length, Length strip, Seams seams, int copies)
    {
        var step = strip - seams.Both;
        for (var shorter = Length.Zero; ; shorter += Length.Inches(2))
        {
            var first = strip - shorter;
            var rest = (length * copies) - first;
            var full = (int)(rest / step).Floor();
            var last = rest - (step * full);
            var lengths = ImmutableArray.CreateBuilder<Length>();
            lengths.Add(first);
            lengths.AddRange(Enumerable.Repeat(strip, full));
            if (last.Sign > 0)
            {
                lengths.Add((last + seams.Both).RoundUpTo(seams.RulerStep));
            }

            if (shorter > strip / 2 || JoinsAreClear(lengths, length, seams, copies))
            {
                return lengths.ToImmutable();
            }
        }
    }

    private static bool JoinsAreClear(IEnumerable<Length> lengths, Length length, Seams seams, int copies)
    {
        var end = Length.Zero;
        foreach (var strip in lengths.SkipLast(1))
        {
            end += strip - seams.Both;
            for (var i = 0; i <= copies; i++)
            {
                var distance = end + seams.Allowance - (length * i);
                if (distance < Clear && -distance < Clear)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static PieceBook.Entry Strip(PieceBook book, Seams seams, string role, Length length, Length width) =>
        book.Piece(
            role,
            length,
            width,
            mayTurn: false,
            Message.Of("use.strip"),
            Message.Of("why.strip", ("finished", width - seams.Both), ("seams", seams.Both), ("cut", width))
        );
}
