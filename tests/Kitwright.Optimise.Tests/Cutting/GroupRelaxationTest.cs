using System.Numerics;
using Kitwright.Cutting;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;
using Kitwright.Tests.Cutting;
using Xunit;

namespace Kitwright.Optimise.Tests.Cutting;

/// <summary>The group relaxation against set cover by a general solver, and the group against determinants. Own arithmetic.</summary>
public sealed class GroupRelaxationTest
{
    [Fact]
    public void Classes_add_up_and_the_columns_of_the_matrix_are_nothing()
    {
        var random = new Random(3);
        for (var round = 0; round < 300; round++)
        {
            var size = random.Next(1, 6);
            int[][] matrix = [.. Enumerable.Range(0, size).Select(_ => Enumerable.Range(0, size).Select(_ => random.Next(-4, 9)).ToArray())];
            var determinant = Determinant(matrix);
            var group = FiniteGroup.Of(matrix, 100_000);
            if (determinant.IsZero || BigInteger.Abs(determinant) > 100_000)
            {
                Assert.Null(group);
                continue;
            }

            Assert.Equal(BigInteger.Abs(determinant), group!.Order);
            for (var column = 0; column < size; column++)
            {
                Assert.Equal(0, group.ClassOf([.. matrix.Select(row => row[column])]));
            }

            int[] x = [.. matrix.Select(_ => random.Next(-20, 20))];
            int[] y = [.. matrix.Select(_ => random.Next(-20, 20))];
            Assert.Equal(group.ClassOf([.. x.Zip(y, (a, b) => a + b)]), group.Add(group.ClassOf(x), group.ClassOf(y)));
            Assert.Equal(group.ClassOf([.. x.Select(a => -a)]), group.Negative(group.ClassOf(x)));
            // As many different classes as the order says, as far as small vectors reach.
            if (size == 1)
            {
                Assert.Equal(group.Order, Enumerable.Range(0, group.Order).Select(i => group.ClassOf([i])).Distinct().Count());
            }
        }
    }

    [Fact]
    public void Few_kinds_of_pieces_in_any_number_take_what_a_general_solver_says()
    {
        var random = new Random(11);
        var compared = 0;
        for (var round = 0; round < 120; round++)
        {
            var kinds = random.Next(1, 5);
            var problem = Cloth.Of(
                $"{random.Next(18, 45)}",
                [.. Enumerable.Range(0, kinds).Select(_ => ($"{random.Next(2, 17)} x {random.Next(2, 17)}{(random.Next(2) == 0 ? " turn" : "")}", random.Next(1, 150)))]
            );
            if (ClothIntake.Of(problem).Grid is not { } grid)
            {
                continue;
            }

            var meter = new WorkMeter(WorkBudget.Thorough with { SafetyStop = TimeSpan.FromHours(1) }, TestContext.Current.CancellationToken);
            var generator = new ColumnGenerator(grid, meter);
            Assert.True(generator.Solve(grid.Counts.AsSpan(), long.MaxValue));
            var solution = generator.Solution();
            var start = FirstFit.Strips(grid);
            var length = CutStrips.TotalHeight(start);
            var enumeration = new ReducedCostEnumeration(grid, solution.Duals, solution.Scale, meter);
            if (
                GroupRelaxation.GroupOf(solution) is not { } group
                || enumeration.Columns(length, length, 5000) is not var (columns, target)
                || GroupRelaxation.Of(grid, solution, group, columns, meter) is not { } relaxation
            )
            {
                continue;
            }

            var (strips, searched) = relaxation.Search(0, target, new(grid.Heights));
            var whole = SetCover.Solve(grid, columns, start: null, 0, length, meter);
            Assert.True(whole.Exhausted && strips is not null);
            Assert.Equal(CutStrips.TotalHeight(whole.Strips!.Value), CutStrips.TotalHeight(strips.Value));
            Assert.Equal(CutStrips.TotalHeight(strips.Value), searched);
            compared++;
        }

        Assert.True(compared > 80, $"{compared}");
    }

    [Fact]
    public void Thousands_of_pieces_of_few_kinds_are_proved_in_the_usual_work()
    {
        var problem = Cloth.Of("42", ("41/4 x 5/4 turn", 1700), ("2 x 37/4", 980), ("7/2 x 45/4 turn", 420), ("31/8 x 2 turn", 2530));
        var budget = WorkBudget.Normal with { SafetyStop = TimeSpan.FromHours(1) };
        var plan = ColumnGeneration.Plan(problem, budget, TestContext.Current.CancellationToken).Value!;
        Assert.Empty(PlanAudit.Of(plan));
        Assert.NotEqual(ProofStatus.Within, plan.Proof.Status);
    }

    private static BigInteger Determinant(int[][] matrix) =>
        matrix.Length == 0
            ? BigInteger.One
            : Enumerable
                .Range(0, matrix.Length)
                .Aggregate(
                    BigInteger.Zero,
                    (sum, i) =>
                        sum + ((i % 2 == 0 ? 1 : -1) * matrix[i][0] * Determinant([.. matrix.Where((_, row) => row != i).Select(row => row[1..])]))
                );
}
