using System.Collections.Immutable;
using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.Trimming;

/// <summary>How generous one person has to cut, for trims that find cloth.</summary>
public static class TrimWords
{
    private const int Percent = 95;

    /// <summary>A sentence for rounds of plain strips and one for other units, where the plan has them.</summary>
    public static ImmutableArray<Message> Of(QuiltPlan plan, Hands hands)
    {
        var lines = TrimSheet.Of(plan, hands, Percent / 100.0, StandardTimes.Of(Practice.Experienced), Allowances.Usual).Lines;
        return
        [
            .. from kind in new[] { (Key: "accuracy.trims.rounds", Lines: lines.Where(line => line.FromSeam is not null)), (Key: "accuracy.trims.units", Lines: lines.Where(line => line.FromSeam is null)) }
            let most = kind.Lines.Select(line => (Length?)line.Generous).Max()
            where most is not null
            select Message.Of(kind.Key, ("generous", most!.Value), ("percent", Percent)),
        ];
    }
}
