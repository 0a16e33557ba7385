using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.Quilts.Reading;

/// <summary>Collects what is found while a file is read, up to <see cref="QuiltLimits.Findings"/>.</summary>
internal sealed class Report
{
    private readonly ImmutableArray<Finding>.Builder findings = ImmutableArray.CreateBuilder<Finding>();

    public bool HasFault { get; private set; }

    public bool IsFull => findings.Count >= QuiltLimits.Findings;

    public void Fault(string rule, string place, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Add(Finding.Of(rule, place, slots));

    public void Note(string rule, string place, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Add(Finding.NoteOf(rule, place, slots));

    public void Add(Finding finding)
    {
        HasFault |= finding.Weight == Weight.Fault;
        if (findings.Count < QuiltLimits.Findings - 1)
        {
            findings.Add(finding);
        }
        else if (!IsFull)
        {
            findings.Add(Finding.NoteOf("quilt.findings.more", "", ("shown", QuiltLimits.Findings - 1)));
        }
    }

    public ImmutableArray<Finding> ToImmutable() => findings.ToImmutable();
}
