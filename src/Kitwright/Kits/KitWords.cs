using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Kits;

/// <summary>A kit plan in sentences.</summary>
public static class KitWords
{
    /// <summary>How many kits the bolts carry of a colorway, and whether more may be possible.</summary>
    public static Message Carries(LineOutcome line) =>
        line.Carries == line.CarriesAtMost
            ? Message.Of("kits.carries", ("colorway", line.Colorway), ("kits", line.Carries))
            : Message.Of("kits.carries-at-least", ("colorway", line.Colorway), ("kits", line.Carries), ("most", line.CarriesAtMost));

    /// <summary>Which fabric limits a colorway, and what one more bolt would bring.</summary>
    public static Message Limit(LineOutcome line) =>
        Message.Of(
            "kits.limit",
            ("fabrics", line.Limit.Fabrics.Select(f => Message.Plain(f.Name)).ToImmutableArray()),
            ("count", line.Limit.Fabrics.Length),
            ("putUp", line.Limit.Fabrics.Select(f => f.PutUp).Max()),
            ("brings", line.Limit.Brings)
        );

    /// <summary>How many of the wanted kits come out whole, over all colorways, and whether more may be possible.</summary>
    public static Message Filled(KitPlan plan) =>
        Message.Of(
            "kits.filled",
            ("complete", plan.Complete),
            ("wanted", plan.Lines.Sum(l => l.Wanted)),
            ("most", plan.CompleteAtMost),
            ("open", plan.Complete == plan.CompleteAtMost ? "no" : "yes")
        );

    /// <summary>What is missing of a fabric for the wanted kits; null where nothing is.</summary>
    public static Message? Short(FabricOutcome fabric) =>
        fabric.Short.IsEmpty
            ? null
            : Message.Of(
                "kits.short",
                ("fabric", fabric.Name),
                ("length", fabric.ShortLength),
                ("cuts", fabric.Short.Sum(s => s.Kits))
            );

    /// <summary>What to order of a fabric.</summary>
    public static Message Order(OrderLine line) =>
        Message.Of(
            "kits.order",
            ("fabric", line.Name),
            ("bolts", line.Bolts),
            ("putUp", line.PutUp),
            ("length", line.Length),
            ("short", line.Short),
            ("left", line.LeftOver)
        );

    /// <summary>One bolt's cuts as lines of a ticket: so many of one length, for so many kits of a colorway.</summary>
    public static ImmutableArray<Message> Cuts(BoltLoad load) =>
        [
            .. load.Cuts.GroupBy(c => (c.Length, c.Colorway, c.Letter))
                .Select(g => Message.Of(
                    "kits.cut",
                    ("times", g.Count()),
                    ("length", g.Key.Length),
                    ("letter", g.Key.Letter),
                    ("colorway", g.Key.Colorway),
                    ("first", g.Min(c => c.Kit)),
                    ("last", g.Max(c => c.Kit))
                )),
        ];

    /// <summary>How good the allocation of a fabric is known to be.</summary>
    public static Message Proof(FabricOutcome fabric) =>
        fabric.Goals.FirstOrDefault(g => !g.Proved) is not { } open
            ? Message.Of("kits.proved")
            : open.Goal switch
            {
                AllocationGoal.Unmet => Message.Of("kits.open.unmet", ("value", (int)open.Value.Numerator), ("bound", (int)open.Bound.Ceiling())),
                AllocationGoal.Waste => Message.Of("kits.open.waste", ("value", Length.Inches(open.Value)), ("bound", Length.Inches(open.Bound))),
                AllocationGoal.Opened => Message.Of("kits.open.opened", ("value", (int)open.Value.Numerator), ("bound", (int)open.Bound.Ceiling())),
                _ => Message.Of("kits.open.kept", ("value", Length.Inches(open.Value)), ("bound", Length.Inches(open.Bound))),
            };
}
