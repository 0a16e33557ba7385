using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>Fills page after page with what is to be laid.</summary>
public static class Pager
{
    /// <exception cref="InvalidOperationException">Something fits no page at all: a fault of ours, with the reason.</exception>
    public static ImmutableArray<Node> Pages(Element content, Space page)
    {
        var pages = ImmutableArray.CreateBuilder<Node>();
        for (var rest = content; ;)
        {
            switch (rest.Lay(page))
            {
                case Whole whole:
                    pages.Add(whole.Drawing);
                    return pages.ToImmutable();
                case Part part:
                    pages.Add(part.Drawing);
                    rest = part.Rest;
                    break;
                case var refused:
                    throw new InvalidOperationException($"Nothing fits page {pages.Count + 1}: {refused}.");
            }
        }
    }
}
