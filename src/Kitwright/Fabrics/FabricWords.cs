using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Fabrics;

/// <summary>What whoever cuts a fabric must heed about its print and its sides, in words.</summary>
public static class FabricWords
{
    /// <summary>None where the cloth may lie any way round and shows its print anywhere.</summary>
    public static ImmutableArray<Message> Facts(Fabric fabric) => [.. All(fabric)];

    private static IEnumerable<Message> All(Fabric fabric)
    {
        if (fabric.Direction != PrintDirection.Any)
        {
            yield return Message.Of(fabric.Direction == PrintDirection.OneWay ? "fabric.one-way" : "fabric.two-way");
        }

        switch (fabric.RepeatAlong, fabric.RepeatAcross)
        {
            case ({ } along, { } across):
                yield return Message.Of("fabric.repeat", ("along", along), ("across", across));
                break;
            case ({ } along, null):
                yield return Message.Of("fabric.repeat.along", ("along", along));
                break;
            case (null, { } across):
                yield return Message.Of("fabric.repeat.across", ("across", across));
                break;
        }

        if (fabric.PanelLength is { } panel)
        {
            yield return Message.Of("fabric.panels", ("length", panel));
        }

        if (fabric.TwoSided)
        {
            yield return Message.Of("fabric.two-sided");
        }
    }
}
