using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Kits;

/// <summary>
/// The cross-check to the swatch key: lengths folded alike differ in size as they differ in length. Letters whose
/// lengths are nearly the same are named, for there the size proves nothing.
/// </summary>
/// <param name="LargestFirst">All letters, by length.</param>
/// <param name="Alike">Groups of letters that size does not tell apart.</param>
public sealed record WhichFabric(ImmutableArray<string> LargestFirst, ImmutableArray<ImmutableArray<string>> Alike)
{
    /// <summary>Folded cloth is not measured closer than this: the least step in which most shops sell, 1/8 yd.</summary>
    public static Length Step { get; } = Length.Yards(new(1, 8));

    public static WhichFabric Of(Needs needs)
    {
        var byLength = needs.Lengths.OrderByDescending(n => n.Length).ThenBy(n => n.Letter, StringComparer.Ordinal).ToArray();
        var alike = new List<List<Need>>();
        for (var i = 0; i < byLength.Length; i++)
        {
            if (i > 0 && byLength[i - 1].Length - byLength[i].Length < Step)
            {
                alike[^1].Add(byLength[i]);
            }
            else
            {
                alike.Add([byLength[i]]);
            }
        }

        return new(
            [.. byLength.Select(n => n.Letter).Distinct()],
            [
                .. alike
                    .Select(group => group.Select(n => n.Letter).Distinct().ToImmutableArray())
                    .Where(group => group.Length > 1),
            ]
        );
    }

    public ImmutableArray<Message> Say() =>
        [
            Message.Of("which.order", ("letters", Letters(LargestFirst))),
            .. Alike.Select(group => Message.Of("which.alike", ("letters", Letters(group)), ("step", Step))),
        ];

    private static ImmutableArray<Message> Letters(ImmutableArray<string> letters) => [.. letters.Select(Message.Plain)];
}
