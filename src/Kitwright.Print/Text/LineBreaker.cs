using System.Collections.Immutable;

namespace Kitwright.Print.Text;

/// <summary>Text of one style within a paragraph.</summary>
public sealed record TextRun(string Text, TextStyle Style);

/// <summary>Breaks text into lines, first fit: at spaces, but never within a measure. A word wider than the line stands alone.</summary>
internal static class LineBreaker
{
    /// <summary>Each line as pieces of text that follow one another, one per run of style.</summary>
    public static ImmutableArray<ImmutableArray<SetText>> Lines(ImmutableArray<TextRun> runs, double width)
    {
        var text = string.Concat(runs.Select(run => run.Text));
        var lines = ImmutableArray.CreateBuilder<ImmutableArray<SetText>>();
        int start = 0,
            lastBreak = -1;
        for (var at = 0; at <= text.Length; at++)
        {
            var ends = at == text.Length || text[at] == '\n';
            if (!ends && !(text[at] == ' ' && Measures.MayBreakAt(text, at)))
            {
                continue;
            }

            if (lastBreak >= start && Width(runs, start, at) > width)
            {
                lines.Add(Cut(runs, start, lastBreak));
                start = lastBreak + 1;
            }

            lastBreak = at;
            if (ends)
            {
                lines.Add(Cut(runs, start, at));
                start = at + 1;
            }
        }

        return lines.ToImmutable();
    }

    private static double Width(ImmutableArray<TextRun> runs, int from, int to) =>
        Cut(runs, from, to).Sum(text => text.Width);

    private static ImmutableArray<SetText> Cut(ImmutableArray<TextRun> runs, int from, int to)
    {
        var cut = ImmutableArray.CreateBuilder<SetText>();
        var at = 0;
        foreach (var run in runs)
        {
            int first = Math.Max(from - at, 0),
                last = Math.Min(to - at, run.Text.Length);
            if (first < last)
            {
                cut.Add(SetText.Of(run.Text[first..last], run.Style));
            }

            at += run.Text.Length;
        }

        return cut.ToImmutable();
    }
}
