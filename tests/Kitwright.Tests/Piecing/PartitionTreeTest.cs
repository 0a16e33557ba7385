using System.Collections.Immutable;
using CsCheck;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>
/// Divisions that straight cuts made come back as trees of straight seams; the pinwheel, the least that none makes,
/// does not, whatever is built round it.
/// </summary>
public sealed class PartitionTreeTest
{
    private readonly record struct Cell(Rational Left, Rational Bottom, Rational Right, Rational Top);

    /// <summary>A 12 in square divided by so many straight cuts, each through one part, at half inches.</summary>
    private static readonly Gen<ImmutableArray<Cell>> Divided = Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Bool)
        .Array[0, 10]
        .Select(cuts =>
        {
            var cells = new List<Cell> { new(0, 0, 12, 12) };
            foreach (var (which, where, across) in cuts)
            {
                var cell = cells[which % cells.Count];
                var length = across ? cell.Right - cell.Left : cell.Top - cell.Bottom;
                var halves = (int)(length * 2).Floor();
                if (halves < 4)
                {
                    continue;
                }

                var at = new Rational(2 + (where % (halves - 3)), 2);
                cells.Remove(cell);
                cells.AddRange(
                    across
                        ? [cell with { Right = cell.Left + at }, cell with { Left = cell.Left + at }]
                        : [cell with { Top = cell.Bottom + at }, cell with { Bottom = cell.Bottom + at }]
                );
            }

            return cells.ToImmutableArray();
        });

    private static Kitwright.Findings.Checked<Pieced> Piece(IEnumerable<Cell> cells)
    {
        var quilt = Sample.Quilt(1, "a");
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        return PiecingPlan.Of(
            quilt,
            Sample.Row(1, Length.Inches(12), [.. cells.Select((c, i) => Sample.Rectangle(i + 1, "a", c.Left, c.Bottom, c.Right, c.Top))]),
            letters,
            ClothTerms.Usual
        );
    }

    /// <summary>A tree over n pieces sews n − 1 seams, however it is grouped (own arithmetic).</summary>
    [Fact]
    public void What_straight_cuts_divide_straight_seams_join() =>
        Divided.Sample(cells =>
        {
            var pieced = Piece(cells);
            if (pieced.Value is not { } plan)
            {
                return false;
            }

            var seams = plan.Sewing.Recipes.Sum(r => r.Runs * r.Verbs.OfType<Sew>().Count());
            var taken = plan.Sewing.Recipes.Sum(r => r.Runs * r.Verbs.OfType<Take>().Count());
            return taken == cells.Length && seams == cells.Length - 1;
        });

    /// <summary>One of the parts is replaced by five that whirl round one another: n − 1 seams still, and one of them in part.</summary>
    [Fact]
    public void A_pinwheel_anywhere_has_no_tree() =>
        Gen.Select(Divided, Gen.Int[0, 1000])
            .Sample((cells, which) =>
            {
                var cell = cells[which % cells.Length];
                Rational w = (cell.Right - cell.Left) / 3,
                    h = (cell.Top - cell.Bottom) / 3;
                Cell At(int left, int bottom, int right, int top) =>
                    new(cell.Left + (w * left), cell.Bottom + (h * bottom), cell.Left + (w * right), cell.Bottom + (h * top));
                var pieced = Piece(cells.Remove(cell).AddRange(At(0, 0, 2, 1), At(2, 0, 3, 2), At(1, 2, 3, 3), At(0, 1, 1, 3), At(1, 1, 2, 2)));
                if (pieced.Value is not { } plan)
                {
                    return false;
                }

                var verbs = plan.Sewing.Recipes.SelectMany(r => Enumerable.Repeat(r.Verbs, r.Runs)).SelectMany(v => v).ToArray();
                return verbs.Count(v => v is SewPart) == 1
                    && verbs.Count(v => v is CloseSeam) == 1
                    && verbs.Count(v => v is Take) == cells.Length + 4
                    && verbs.Count(v => v is Sew or SewIn or SewPart) == cells.Length + 3;
            });
}
