using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>What whoever cuts a directional print must heed.</summary>
public static class PrintWords
{
    /// <summary>Null for cloth whose pieces may lie any way round.</summary>
    public static Message? Of(PlanFabric fabric) =>
        fabric.Direction switch
        {
            PrintDirection.OneWay => Message.Of("chart.print.one-way"),
            PrintDirection.TwoWay => Message.Of("chart.print.two-way"),
            _ => null,
        };
}
