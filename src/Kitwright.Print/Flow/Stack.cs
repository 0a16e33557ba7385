using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>Elements one below the other. Breaks between them, or within one that can be broken.</summary>
/// <param name="Gap">Between two elements, in points; none at the head of a page.</param>
public sealed record Stack(ImmutableArray<Element> Items, double Gap = 0) : Element
{
    public static Stack Of(double gap, params ImmutableArray<Element> items) => new(items, gap);

    public override Fit Lay(Space space)
    {
        var drawn = ImmutableArray.CreateBuilder<Node>();
        double height = 0;
        for (var i = 0; i < Items.Length; i++)
        {
            if (Items[i] is Blank && drawn.Count == 0)
            {
                continue;
            }

            var top = drawn.Count == 0 ? 0 : height + Gap;
            var fit = Items[i].Lay(space.Less(top));
            if (fit is Whole whole && !StrandsHeading(i, space.Less(top + whole.Height + Gap)))
            {
                drawn.Add(Group.At(0, top, whole.Drawing));
                height = top + whole.Height;
            }
            else if (fit is Part part)
            {
                drawn.Add(Group.At(0, top, part.Drawing));
                return new Part(top + part.Height, new Group(drawn.ToImmutable()), this with { Items = [part.Rest, .. Items[(i + 1)..]] });
            }
            else
            {
                return Break(i, fit, drawn, height, space);
            }
        }

        return new Whole(height, new Group(drawn.ToImmutable()));
    }

    // A heading at the foot of a page moves on with what it heads, and so do headings right above it.
    private Fit Break(int at, Fit fit, ImmutableArray<Node>.Builder drawn, double height, Space space)
    {
        var keep = drawn.Count;
        while (keep > 0 && Items[keep - 1].KeepWithNext)
        {
            keep--;
        }

        if (keep == 0)
        {
            return fit as Refused ?? new Refused($"{Items[at].GetType().Name} with what follows it", height, space.Height);
        }

        drawn.Count = keep;
        return new Part(height, new Group(drawn.ToImmutable()), this with { Items = Items[keep..] });
    }

    private bool StrandsHeading(int at, Space left) =>
        Items[at].KeepWithNext && at + 1 < Items.Length && Items[at + 1].Lay(left) is Refused;
}
