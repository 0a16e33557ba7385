using Kitwright.Findings;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Findings;

public sealed class FindingTest
{
    [Fact]
    public void Reason_and_remedy_share_the_slots()
    {
        var finding = Finding.Of("quilt.overlap", "block/star", ("patch", "7"));
        Assert.Equal(Message.Of("quilt.overlap", ("patch", "7")), finding.Reason);
        Assert.Equal(Message.Of("quilt.overlap.remedy", ("patch", "7")), finding.Remedy);
        Assert.Equal(Weight.Fault, finding.Weight);
        Assert.Equal(Weight.Note, Finding.NoteOf("quilt.overlap", "").Weight);
    }

    [Fact]
    public void A_value_is_good_with_notes_but_not_with_faults()
    {
        var value = Message.Plain("value");
        var note = Finding.NoteOf("a", "");
        var fault = Finding.Of("a", "");
        Assert.True(Checked<Message>.Of(value).Good);
        Assert.True((Checked<Message>.Of(value) with { Findings = [note] }).Good);
        Assert.False((Checked<Message>.Of(value) with { Findings = [note, fault] }).Good);
        Assert.False(Checked<Message>.Failed(note).Good);
        Assert.Equal([fault], Checked<Message>.Failed(fault).Findings);
    }

    [Fact]
    public void Findings_compare_by_value() =>
        Assert.Equal(Finding.Of("a", "b", ("c", 1)), Finding.Of("a", "b", ("c", 1L)));
}
