using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Samples.PlanDraft;

namespace Kitwright.Checking.Tests;

/// <summary>Tops of thousands of patches stay within the checker's limits, whether sewn row by row or all in one.</summary>
public sealed class LargeTopTest
{
    [Theory]
    [InlineData(45, true)]
    [InlineData(45, false)]
    [InlineData(100, true)]
    public void A_checkerboard_of_one_inch_squares_is_followed_to_the_last(int side, bool byRows)
    {
        var result = PlanChecker.Check(Checkerboard(side, byRows));
        Assert.Equal([], result.Findings.Select(f => $"{f.Rule} {f.Place}"));
        Assert.Equal(side * side, result.Trace.Links.Length);
    }

    [Fact]
    public void One_square_of_two_thousand_in_the_wrong_place_is_found()
    {
        var plan = Checkerboard(45, byRows: false).EditPatch("frame/r20c31", p => p with { Role = p.Role == "light" ? "dark" : "light" });
        Assert.Equal([("check.sewing.patch", "frame/r20c31")], PlanChecker.Check(plan).Findings.Select(f => (f.Rule, f.Place)));
    }

    private static QuiltPlan Checkerboard(int side, bool byRows)
    {
        var draft = new PlanDraft(Length.Inches(side), Length.Inches(side));
        draft.Fabric("A", "light");
        draft.Fabric("B", "dark");
        for (var i = 0; i < side * side; i++)
        {
            var (row, column) = Math.DivRem(i, side);
            draft.Frame($"r{row}c{column}", (row + column) % 2 == 0 ? "light" : "dark", column, row, column + 1, row + 1);
        }

        var square = Length.Inches(1, 1, 2);
        var half = side * side / 2;
        PathId[] pieces = [draft.Piece("A1", "light", square, square, (side * side) - half), draft.Piece("B1", "dark", square, square, half)];
        if (byRows)
        {
            draft.Recipe("row/even", side, 1, null, (side + 1) / 2, ["row"], [.. Row("row", 0, 0)]);
            draft.Recipe("row/odd", side, 1, null, side / 2, ["row"], [.. Row("row", 0, 1)]);
        }

        var verbs = new List<Verb>();
        for (var row = 0; row < side; row++)
        {
            var register = row == 0 ? "top" : "row";
            verbs.AddRange(
                byRows ? [new Use(register, new(row % 2 == 0 ? "row/even" : "row/odd"), Motion.Shift(0, row))] : Row(register, row, row)
            );
            if (row > 0)
            {
                verbs.AddRange(Join("top", "row", Level(row)));
            }
        }

        draft.Recipe("frame/top", side, side, Recipe.WholeTop, 1, ["top"], [.. verbs]);
        return draft.Build();

        IEnumerable<Verb> Row(string register, int y, int first)
        {
            yield return TakeAt(register, pieces[first % 2], 0, y);
            for (var x = 1; x < side; x++)
            {
                yield return TakeAt("next", pieces[(first + x) % 2], x, y);
                foreach (var verb in Join(register, "next", Upright(x)))
                {
                    yield return verb;
                }
            }
        }
    }
}
