using Xunit;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.Tests.Beginnings;

public sealed class NewQuiltTest
{
    public static TheoryData<string, LengthUnit> EveryBlock()
    {
        var data = new TheoryData<string, LengthUnit>();
        foreach (var block in BlockBook.All)
        {
            data.Add(block.Id, LengthUnit.Inch);
            data.Add(block.Id, LengthUnit.Centimeter);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(EveryBlock))]
    public void Every_block_of_the_book_makes_a_quilt_that_is_read_back_and_planned(string id, LengthUnit units)
    {
        var block = BlockBook.Find(id)!;
        var begun = NewQuilt.With(block, units) with { Columns = 2, Rows = 2, Sashing = BlockWidths.Of(block, units)[0] / 8 };

        var made = begun.Make();

        Assert.Empty(made.Findings);
        var written = QuiltFile.Write(made.Value!);
        Assert.Equal(written, QuiltFile.Write(QuiltFile.Read(written).Value!));
        if (units == LengthUnit.Inch)
        {
            // Planned, cut and sewn where the checker is tested.
            return;
        }

        var planned = QuiltPlanner.Plan(made.Value!, null, [], PlanOptions.Usual, FirstFit.Plan);

        // A block that cannot be planned is refused with what would help.
        Assert.Equal(planned.Value is null ? ["piecing"] : [], planned.Findings.Where(f => f.Weight == Weight.Fault).Select(f => f.Rule.Split('.')[0]).Distinct());
        // Small patches of a block may be narrower than their seams, which is said and no fault.
        Assert.All(planned.Findings.Where(f => f.Weight == Weight.Note), f => Assert.Contains(f.Rule, new[] { "piecing.slender", "piecing.short-seam" }));
        Assert.True(planned.Value is null || block.Patches.All(p => p.Arcs.IsEmpty));
    }
}
