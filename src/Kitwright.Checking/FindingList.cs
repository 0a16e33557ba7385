using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Words;

namespace Kitwright.Checking;

/// <summary>
/// Findings in the order in which the rules ran. Of one rule the first few are kept and the rest are counted, so that
/// one slip in a large plan does not bury the others.
/// </summary>
internal sealed class FindingList
{
    private const int KeptPerRule = 20;

    private readonly List<Finding> kept = [];
    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);

    public bool Any => kept.Count > 0;

    public void Add(Finding? finding)
    {
        if (finding is null)
        {
            return;
        }

        var count = counts[finding.Rule] = counts.GetValueOrDefault(finding.Rule) + 1;
        if (count <= KeptPerRule)
        {
            kept.Add(finding);
        }
    }

    public void Add(string rule, string place, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Add(Finding.Of(rule, place, slots));

    public void Add(
        string rule,
        string place,
        Message measured,
        Message expected,
        params ReadOnlySpan<(string Name, object Value)> slots
    ) => Add(Finding.Of(rule, place, slots) with { Measured = measured, Expected = expected });

    public ImmutableArray<Finding> All() =>
        [
            .. kept,
            .. counts
                .Where(c => c.Value > KeptPerRule)
                .Select(c => Finding.NoteOf("check.more", c.Key, ("count", c.Value - KeptPerRule), ("rule", c.Key))),
        ];
}
