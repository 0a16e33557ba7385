using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Features.Deciding;

/// <summary>What a tried change moves: the size of the quilt and the yards of each fabric.</summary>
public static class Moved
{
    public static ImmutableArray<Message> Between(QuiltPlan before, QuiltPlan after)
    {
        var moved = ImmutableArray.CreateBuilder<Message>();
        if ((before.Design.Width, before.Design.Height) != (after.Design.Width, after.Design.Height))
        {
            moved.Add(Message.Of("web.moved.size", ("before", Size(before)), ("after", Size(after))));
        }

        foreach (var need in after.Needs.Lengths)
        {
            var was = before.Needs.Lengths.FirstOrDefault(n => n.Letter == need.Letter && n.Kind == need.Kind);
            if (was is not null && was.Length != need.Length)
            {
                moved.Add(
                    Message.Of(
                        "web.moved.yards",
                        ("letter", need.Letter),
                        ("before", was.Length),
                        ("after", need.Length),
                        ("way", need.Length > was.Length ? "more" : "less"),
                        ("by", need.Length > was.Length ? need.Length - was.Length : was.Length - need.Length)
                    )
                );
            }
        }

        var total = Total(after) - Total(before);
        moved.Add(
            Message.Of(
                "web.moved.total",
                ("way", total.Sign switch { > 0 => "more", < 0 => "less", _ => "same" }),
                ("by", total.Sign < 0 ? -total : total)
            )
        );
        return moved.ToImmutable();
    }

    private static Length Total(QuiltPlan plan) => plan.Needs.Lengths.Aggregate(Length.Zero, (sum, need) => sum + need.Length);

    private static Message Size(QuiltPlan plan) =>
        Message.Of("web.size", ("width", plan.Design.Width), ("height", plan.Design.Height));
}
