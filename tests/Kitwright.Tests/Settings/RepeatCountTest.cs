using System.Collections.Immutable;
using CsCheck;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Settings;
using Xunit;

namespace Kitwright.Tests.Settings;

/// <summary>Burnside's counts against every arrangement tried one by one.</summary>
public sealed class RepeatCountTest
{
    private static readonly Position Diagonal = new(1, true);
    private static readonly Position Level = new(0, true);
    private static readonly Position Half = new(2, false);
    private static readonly Position Quarter = new(1, false);

    public static TheoryData<string> Symmetries => ["none", "diagonal", "level", "half", "half and diagonals", "half and level", "quarter", "full"];

    private static ImmutableArray<Position> Symmetry(string name) =>
        name switch
        {
            "none" => Closed(),
            "diagonal" => Closed(Diagonal),
            "level" => Closed(Level),
            "half" => Closed(Half),
            "half and diagonals" => Closed(Half, Diagonal),
            "half and level" => Closed(Half, Level),
            "quarter" => Closed(Quarter),
            _ => Position.All,
        };

    private static ImmutableArray<Position> Closed(params ReadOnlySpan<Position> generators)
    {
        HashSet<Position> all = [Position.Identity];
        for (var before = 0; before != all.Count; )
        {
            before = all.Count;
            foreach (var generator in generators)
            {
                all.UnionWith(all.Select(p => p.Then(generator)).ToList());
            }
        }

        return [.. all];
    }

    private static RepeatGroup Group(int n, string symmetry, bool mirrored = false) => new(n, Looks.Of(Symmetry(symmetry), mirrored));

    // Derived for this project, shifts of the repeat counted as equal: a block with one diagonal mirror gives 17 settings
    // on 2 × 2 and 3,692 on 3 × 3; a block with no mirror 23 and 7,296.
    [Theory]
    [InlineData("diagonal", 2, 17)]
    [InlineData("diagonal", 3, 3_692)]
    [InlineData("none", 2, 23)]
    [InlineData("none", 3, 7_296)]
    [InlineData("full", 3, 1)]
    public void Gives_the_derived_counts(string symmetry, int n, int count)
    {
        var group = Group(n, symmetry);
        Assert.Equal(count, BurnsideCount.Of(group));
        Assert.Equal(count, Arrangements.All(group).Length);
    }

    [Theory]
    [MemberData(nameof(Symmetries))]
    public void Equals_the_number_of_orbits_by_hand(string symmetry)
    {
        foreach (var mirrored in (bool[])[false, true])
        {
            foreach (var group in ((int[])[1, 2, 3]).Select(n => Group(n, symmetry, mirrored)).Where(Arrangements.CanBeListed))
            {
                Assert.Equal(BurnsideCount.Of(group), OrbitsByHand(group));
                Assert.Equal(BurnsideCount.Of(group), Arrangements.All(group).Length);
            }
        }
    }

    /// <summary>Union by neighbors: each arrangement with its shift by one cell, quarter turn and mirror; no group is built.</summary>
    private static int OrbitsByHand(RepeatGroup group)
    {
        int n = group.Side,
            looks = group.Looks.Count,
            count = (int)Math.Pow(looks, n * n);
        int[] powers = [.. Enumerable.Range(0, n * n).Select(cell => (int)Math.Pow(looks, cell))];
        var parent = Enumerable.Range(0, count).ToArray();
        int Root(int i) => parent[i] == i ? i : parent[i] = Root(parent[i]);
        int[] Cells(int number) => [.. Enumerable.Range(0, n * n).Select(cell => number / powers[cell] % looks)];
        int Number(int[] cells) => cells.Select((look, cell) => look * powers[cell]).Sum();
        for (var number = 0; number < count; number++)
        {
            var cells = Cells(number);
            int At(int row, int column) => cells[((row + n) % n * n) + ((column + n) % n)];
            int[] Build(Func<int, int, int> at) => [.. Enumerable.Range(0, n * n).Select(cell => at(cell / n, cell % n))];
            parent[Root(number)] = Root(Number(Build((r, c) => At(r + 1, c))));
            parent[Root(number)] = Root(Number(Build((r, c) => At(r, c + 1))));
            // What lies at row r and column c after a quarter turn counterclockwise was in row c, column n − 1 − r.
            parent[Root(number)] = Root(Number(Build((r, c) => group.Looks.Moved(At(c, n - 1 - r), Quarter))));
            if (group.Looks.Movers.Contains(Level))
            {
                parent[Root(number)] = Root(Number(Build((r, c) => group.Looks.Moved(At(r, n - 1 - c), Level))));
            }
        }

        return Enumerable.Range(0, count).Count(i => Root(i) == i);
    }

    [Fact]
    public void Positions_are_the_symmetries_of_a_square() =>
        Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7], Generate.Points)
            .Sample(
                (i, j, point) =>
                {
                    Position p = Position.All[i],
                        q = Position.All[j];
                    Assert.Equal(q.Motion().Apply(p.Motion().Apply(point)), p.Then(q).Motion().Apply(point));
                    Assert.Equal(Position.Identity, p.Then(p.Inverse()));
                    // Cells move as points do, about the middle of the square, y up.
                    var (row, column) = p.Move(0, 1, 4);
                    var middle = p.Motion().Apply(new Kitwright.Geometry.Point(new Rational(-1, 2), new Rational(3, 2)));
                    Assert.Equal(middle, new Kitwright.Geometry.Point(new Rational((2 * column) - 3, 2), new Rational(3 - (2 * row), 2)));
                },
                iter: 200
            );

    [Theory]
    [InlineData("diagonal")]
    [InlineData("none")]
    public void Symmetric_ones_are_those_that_every_mover_keeps(string symmetry)
    {
        foreach (var n in (int[])[2, 3])
        {
            var group = Group(n, symmetry);
            var most = group.Looks.Movers.Contains(Level) ? RepeatSymmetry.Full : RepeatSymmetry.QuarterTurn;
            var expected = Arrangements.All(group).Where(a => a.Symmetry == most).Select(a => string.Join(' ', a.Looks)).Order();
            Assert.Equal(expected, Arrangements.Symmetric(group).Select(a => string.Join(' ', a.Looks)).Order());
        }
    }

    [Fact]
    public void Four_by_four_is_counted_and_its_symmetric_ones_are_found()
    {
        var group = Group(4, "diagonal");
        Assert.False(Arrangements.CanBeListed(group));
        // 4^16 arrangements in orbits of at most 128: no fewer than their quotient.
        Assert.True(BurnsideCount.Of(group) > (System.Numerics.BigInteger)(1L << 32) / 128);
        var symmetric = Arrangements.Symmetric(group);
        Assert.NotEmpty(symmetric);
        Assert.All(symmetric, a => Assert.Equal(RepeatSymmetry.Full, a.Symmetry));
    }

    // The log cabin, two logs of one fabric a round, is light and dark about a diagonal; a half-square triangle too.
    [Theory]
    [InlineData("log-cabin", 2)]
    [InlineData("half-square", 2)]
    [InlineData("courthouse-steps", 4)]
    [InlineData("nine-patch", 8)]
    [InlineData("pinwheel", 4)]
    [InlineData("drunkards-path", 2)]
    [InlineData("orange-peel", 8)]
    public void Blocks_of_the_book_have_the_symmetry_of_their_figure(string id, int order) =>
        Assert.Equal(order, BlockSymmetry.Of(BlockBook.Find(id)!.At(Length.Inches(6))).Length);

    [Fact]
    public void A_blocks_symmetry_is_a_group_and_is_kept_by_turning_it() =>
        Gen.Int[0, BlockBook.All.Length - 1]
            .Sample(
                i =>
                {
                    var symmetry = BlockSymmetry.Of(BlockBook.All[i].At(Length.Inches(6)));
                    Assert.Contains(Position.Identity, symmetry);
                    Assert.All(symmetry, p => Assert.All(symmetry, q => Assert.Contains(p.Then(q), symmetry)));
                },
                iter: 40
            );
}
