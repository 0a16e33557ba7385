using Kitwright.Geometry;

namespace Kitwright.Checking.Exact;

/// <summary>Parts of a line, by exact parameters, in order and apart from one another.</summary>
internal sealed class Spans
{
    private Spans(List<(Surd From, Surd To)> parts) => Parts = parts;

    public IReadOnlyList<(Surd From, Surd To)> Parts { get; }

    public bool IsEmpty => Parts.Count == 0;

    /// <summary>The union; parts that touch become one, parts without length are dropped.</summary>
    public static Spans Union(IEnumerable<(Surd From, Surd To)> parts)
    {
        var merged = new List<(Surd From, Surd To)>();
        foreach (var (from, to) in parts.Where(p => p.From < p.To).OrderBy(p => p.From))
        {
            if (merged.Count > 0 && from <= merged[^1].To)
            {
                if (to > merged[^1].To)
                {
                    merged[^1] = (merged[^1].From, to);
                }
            }
            else
            {
                merged.Add((from, to));
            }
        }

        return new(merged);
    }

    public Spans Common(Spans other)
    {
        var common = new List<(Surd From, Surd To)>();
        int i = 0,
            j = 0;
        while (i < Parts.Count && j < other.Parts.Count)
        {
            var (p, q) = (Parts[i], other.Parts[j]);
            Surd from = p.From > q.From ? p.From : q.From,
                to = p.To < q.To ? p.To : q.To;
            if (from < to)
            {
                common.Add((from, to));
            }

            if (p.To < q.To)
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return new(common);
    }
}
