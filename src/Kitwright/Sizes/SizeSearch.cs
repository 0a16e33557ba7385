using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;

namespace Kitwright.Sizes;

/// <summary>The best ways to bring a quilt to a size: blocks and borders are added before the block itself is changed.</summary>
/// <remarks>
/// For each block size on the ruler, each sash width near the present one and each count that keeps the setting's figure
/// whole, the outermost border takes up what is left, to the nearest half inch or centimeter. Ways are ranked by how far they miss,
/// in inches of width and height together, plus what the change does to the design; the weights are our own judgment.
/// </remarks>
public sealed class SizeSearch
{
    public const int Ways = 6;
    private const int MostAcross = 60;

    private Length BorderStep => Metric ? Length.Millimeters(10) : Length.Inches(0, 1, 2);
    private Length LeastBorder => Metric ? Length.Millimeters(20) : Length.Inch;
    private Length MostBorder => Metric ? Length.Millimeters(300) : Length.Inches(12);
    private bool Metric => quilt.Units == LengthUnit.Centimeter;

    private readonly Quilt quilt;
    private readonly SizeTarget target;
    private readonly SizeChoice present;
    private readonly ClassicSetting? classic;
    private readonly List<(SizeWay Way, Rational Cost)> found = [];

    private SizeSearch(Quilt quilt, SizeTarget target)
    {
        this.quilt = quilt;
        this.target = target;
        present = Resizing.ChoiceOf(quilt);
        classic = SettingChanges.ClassicOf(quilt);
    }

    /// <summary>At most six ways, the best first; a finding where no way comes near or the pattern's owner forbids it.</summary>
    public static Checked<SizeProposal> Of(Quilt quilt, SizeTarget target)
    {
        if (quilt.Licensed is { Resize: false } license)
        {
            return Checked<SizeProposal>.Failed(Finding.Of("sizes.license", "/licensed/resize", ("owner", license.Owner)));
        }

        var search = new SizeSearch(quilt, target);
        search.Run();
        // Of ways with the same blocks the best border; then the best of all.
        var ways = search
            .found.GroupBy(f => (f.Way.Choice.Columns, f.Way.Choice.Rows, f.Way.Choice.Block))
            .Select(same => same.MinBy(f => f.Cost))
            .OrderBy(f => f.Cost)
            .ThenBy(f => f.Way.Choice.Text, StringComparer.Ordinal)
            .Take(Ways)
            .Select(f => f.Way)
            .ToImmutableArray();
        return ways.IsEmpty
            ? Checked<SizeProposal>.Failed(Finding.Of("sizes.none", "target", ("width", target.Width), ("height", target.Height)))
            : Checked<SizeProposal>.Of(new(target, ways));
    }

    private void Run()
    {
        foreach (var block in BlockSizes())
        {
            foreach (var sash in SashWidths())
            {
                TryCounts(present with { Block = block, Sash = sash });
            }
        }
    }

    // Block widths whose grid falls on the ruler, from two thirds to three halves of the present one.
    private IEnumerable<Length> BlockSizes()
    {
        yield return present.Block;
        var grids = quilt.Blocks.Select(b => (b.Width, b.Grid.Columns)).ToList();
        // Two inches to two feet by the eighth, or 5 to 60 cm by 5 mm.
        var (step, least, most) = Metric ? (Length.Millimeters(5), 10, 120) : (Length.Inches(0, 1, 8), 16, 24 * 8);
        for (var steps = least; steps <= most; steps++)
        {
            var block = step * steps;
            var ratio = block / present.Block;
            var near = ratio >= new Rational(2, 3) && ratio <= new Rational(3, 2) && ratio != Rational.One;
            if (near && grids.TrueForAll(g => (g.Width * ratio / g.Columns / quilt.RulerStep).IsInteger))
            {
                yield return block;
            }
        }
    }

    private IEnumerable<Length?> SashWidths() =>
        present.Sash is { } sash
            ? ((Length[])[sash, sash - BorderStep, sash + BorderStep]).Where(w => w >= BorderStep).Select(w => (Length?)w)
            : [null];

    private void TryCounts(SizeChoice blocks)
    {
        var (wide, high) = target.Top;
        var inner = present.Borders.IsEmpty ? Length.Zero : present.Borders[..^1].Aggregate(Length.Zero, (sum, b) => sum + b);
        foreach (var columns in Counts(blocks, wide, across: true))
        {
            foreach (var rows in Counts(blocks, high, across: false))
            {
                if (!Completes(columns, rows) || (long)columns * rows > QuiltLimits.PlacedBlocks)
                {
                    continue;
                }

                var counted = blocks with { Columns = columns, Rows = rows };
                var (centerWide, centerHigh) = CenterOf(counted);
                var left = ((wide - centerWide) + (high - centerHigh)) / 4 - inner;
                foreach (var borders in BorderWays(left))
                {
                    Add(counted with { Borders = borders }, centerWide, centerHigh);
                }
            }
        }
    }

    // The counts whose center leaves room for the borders that a quilt of this size may have, or is a little too large.
    private IEnumerable<int> Counts(SizeChoice blocks, Length size, bool across)
    {
        for (var count = 1; count <= MostAcross; count++)
        {
            var (wide, high) = CenterOf(blocks with { Columns = across ? count : 1, Rows = across ? 1 : count });
            var center = across ? wide : high;
            if (center > size + blocks.Block)
            {
                yield break;
            }

            if (center >= size - (MostBorder * 3))
            {
                yield return count;
            }
        }
    }

    /// <summary>Width and height of what lies inside the borders, from one layout with a single block each way.</summary>
    private (Length Width, Length Height) CenterOf(SizeChoice choice)
    {
        var setting = quilt.Setting;
        if (setting.Kind == SettingKind.OnPoint)
        {
            var sashing = setting.Sashing is { } present && choice.Sash is { } width ? present with { Width = width } : null;
            return (OnPointSize.Of(choice.Block, sashing, choice.Columns, quilt.RulerStep), OnPointSize.Of(choice.Block, sashing, choice.Rows, quilt.RulerStep));
        }

        var ratio = choice.Block / present.Block;
        return (Chain(choice.Columns, c => quilt.CellSize(0, c).Width, SashLines.Rows), Chain(choice.Rows, r => quilt.CellSize(r, 0).Height, SashLines.Columns));

        Length Chain(int count, Func<int, Length> size, SashLines without)
        {
            var blocks = Enumerable.Range(0, count).Aggregate(Length.Zero, (sum, i) => sum + (size(i) * ratio));
            var sashes = count + (setting.Sashing is { Outer: true } ? 1 : -1);
            return setting.Sashing?.Lines == without ? blocks : blocks + ((choice.Sash ?? Length.Zero) * sashes);
        }
    }

    private IEnumerable<ImmutableArray<Length>> BorderWays(Length left)
    {
        var outermost = Length.Min(MostBorder, Length.Max(LeastBorder, BorderStep * (left / BorderStep + new Rational(1, 2)).Floor()));
        if (present.Borders.IsEmpty)
        {
            yield return [];
            if (left >= LeastBorder)
            {
                yield return [outermost];
            }

            yield break;
        }

        yield return present.Borders;
        // Units keep their size.
        if (quilt.Borders[^1].Units is null)
        {
            yield return present.Borders.SetItem(present.Borders.Length - 1, outermost);
        }

        var beyond = BorderStep * ((left - present.Borders[^1]) / BorderStep + new Rational(1, 2)).Floor();
        if (beyond >= LeastBorder && beyond <= MostBorder)
        {
            yield return present.Borders.Add(beyond);
        }
    }

    private bool Completes(int columns, int rows)
    {
        if (classic is { } figure)
        {
            return ClassicSettings.Completes(figure, columns, rows) || !ClassicSettings.Completes(figure, present.Columns, present.Rows);
        }

        // A repeat that the quilt now shows whole stays whole.
        int across = quilt.Setting.Cells[0].Length,
            down = quilt.Setting.Cells.Length;
        return (present.Columns % across != 0 || columns % across == 0) && (present.Rows % down != 0 || rows % down == 0);
    }

    private void Add(SizeChoice choice, Length centerWide, Length centerHigh)
    {
        if (Resizing.Framed(quilt, choice.Borders, centerWide, centerHigh) is not var (wide, high))
        {
            return;
        }

        var longer = Length.Max(wide, high);
        if (longer > QuiltLimits.Side)
        {
            return;
        }

        var (width, height) = target.After(wide, high);
        var way = new SizeWay(choice, wide, high, width - target.Width, height - target.Height) { Units = quilt.Units };
        // Farther off than a block is no way to the size.
        if (way.Miss <= choice.Block + Length.Inches(4))
        {
            found.Add((way, way.Miss.InInches + CostOf(choice)));
        }
    }

    private Rational CostOf(SizeChoice choice)
    {
        var cost = Rational.Zero;
        if (choice.Block != present.Block)
        {
            cost += 4 + (Rational.Abs((choice.Block / present.Block) - 1) * 10);
        }

        if (choice.Sash != present.Sash)
        {
            cost += 1;
        }

        cost += 2 * Math.Abs(choice.Borders.Length - present.Borders.Length);
        for (var i = 0; i < Math.Min(choice.Borders.Length, present.Borders.Length); i++)
        {
            cost += Rational.Abs((choice.Borders[i] - present.Borders[i]).InInches) / 2;
        }

        // A border much wider than the block frames more than it finishes.
        var around = choice.Borders.Aggregate(Length.Zero, (sum, b) => sum + b);
        return around > choice.Block ? cost + (around - choice.Block).InInches : cost;
    }
}

/// <summary>The ways to a size, the best first.</summary>
public sealed record SizeProposal(SizeTarget Target, ImmutableArray<SizeWay> Ways);

/// <summary>One way to a size.</summary>
/// <param name="Width">Of the finished top, before quilting.</param>
/// <param name="OverWidth">How much wider it comes out than wanted, after the draw-up; negative where narrower.</param>
public sealed record SizeWay(SizeChoice Choice, Length Width, Length Height, Length OverWidth, Length OverHeight)
{
    /// <summary>The quilt's own.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Inch;

    /// <summary>Width and height missed, together.</summary>
    public Length Miss => (OverWidth.Sign < 0 ? -OverWidth : OverWidth) + (OverHeight.Sign < 0 ? -OverHeight : OverHeight);
}
