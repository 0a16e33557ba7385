using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>Square blocks turned by 45 degrees with sashing between them.</summary>
/// <remarks>
/// Blocks and sashes lie in diagonal rows from lower left to upper right, rows of blocks and rows of sashing in turn;
/// every seam between rows runs on to the quilt's edge, so that the top is sewn with straight seams only. Along a row
/// <c>x + y</c> grows, across the rows <c>x − y</c>; both measure √2 times the length. A quilt with sashing all round
/// ends in the middle of its outermost cornerstones where these are halved, else at their points; one with sashing
/// between the blocks ends at the points of the blocks. As no ruler has these sizes, the center is that rounded up to
/// the ruler step, and what is over lies beyond the last of each row.
/// Ids: <c>frame/sash/row/K/N</c> and <c>frame/post/row/K/N</c> count rows from the upper left and along each row from its
/// lower left end; <c>frame/setting/row/K/start</c> and <c>/end</c> close a row at the edge.
/// </remarks>
internal sealed class SashedOnPointSetting
{
    private readonly Quilt quilt;
    private readonly Setting setting;
    private readonly Sashing sashing;
    private readonly Frame shape;

    // Measures along and across rows are √2 times lengths: a block, a sash, and both.
    private readonly Surd block;
    private readonly Surd sash;
    private readonly Surd pitch;
    private readonly Length side;
    private readonly Surd firstX;
    private readonly Surd firstY;

    private readonly List<Placement> placements = [];
    private readonly List<Patch> patches = [];

    private SashedOnPointSetting(Quilt quilt, Sashing sashing, Length around)
    {
        (this.quilt, this.sashing) = (quilt, sashing);
        setting = quilt.Setting;
        side = quilt.CellSize(0, 0).Width;
        block = Surd.OfRoot2(side.InInches);
        sash = Surd.OfRoot2(sashing.Width.InInches);
        pitch = block + sash;
        Length width = OnPointSize.Of(side, sashing, setting.Columns, quilt.RulerStep),
            height = OnPointSize.Of(side, sashing, setting.Rows, quilt.RulerStep);
        shape = new(around, around, around + width, around + height);
        // The middle of the first block: what is over lies evenly on all sides.
        firstX = around + ((width - (pitch * (setting.Columns - 1))) / 2);
        firstY = around + height - ((height - (pitch * (setting.Rows - 1))) / 2);
    }

    public static Center Lay(Quilt quilt, Sashing sashing, Length around) => new SashedOnPointSetting(quilt, sashing, around).Lay();

    /// <summary>By how much more than whole pitches a diagonal of blocks measures, before it is turned.</summary>
    public static Length Beyond(Sashing sashing) =>
        !sashing.Outer ? -sashing.Width
        : sashing.Halved ? Length.Zero
        : sashing.Width;

    private Center Lay()
    {
        // Blocks by their diagonal row, from the upper left, and by their place along it.
        var rows = PlaceBlocks().ToLookup(b => b.Row, b => b.Along).ToDictionary(row => row.Key, row => (First: row.Min(), Last: row.Max()));
        var last = rows.Keys.Max();
        for (var row = 0; row <= last; row++)
        {
            AddBlockRow(row, rows[row].First, rows[row].Last);
        }

        for (var above = sashing.Outer ? -1 : 0; above < last + (sashing.Outer ? 1 : 0); above++)
        {
            AddSashRow(above, rows.TryGetValue(above, out var up) ? up : null, rows.TryGetValue(above + 1, out var down) ? down : null);
        }

        var half = sashing.Outer ? (block / 2) + sash : block / 2;
        AddEdge("corner/top-left", HalfPlaneCut.Below(shape.Polygon(), 1, -1, Across(0) - half));
        AddEdge("corner/bottom-right", HalfPlaneCut.Below(shape.Polygon(), -1, 1, -(Across(last) + half)));
        return new(shape, [.. placements], [.. patches]);
    }

    private IEnumerable<(int Row, int Along)> PlaceBlocks()
    {
        for (var row = 0; row < (2 * setting.Rows) - 1; row++)
        {
            var odd = row % 2;
            for (var column = 0; column < setting.Columns - odd; column++)
            {
                // Half pitches to the right and down from the first block: both even or both odd.
                var right = (2 * column) + odd;
                var cell = setting.CellAt(row, column);
                var motion = Cells
                    .Turned(cell.Turns, side, side)
                    .Then(Motion.Shift(-side / 2, -side / 2))
                    .Then(Motion.EighthTurns(1))
                    .Then(Motion.Shift(firstX + (pitch * new Rational(right, 2)), firstY - (pitch * new Rational(row, 2))));
                placements.Add(new(new($"place/r{row + 1}/c{column + 1}"), cell.DesignId(), motion));
                yield return ((right + row) / 2, (right - row) / 2);
            }
        }
    }

    // The middle of a row, as x − y, and of a place along the rows, as x + y.
    private Surd Across(int row) => firstX - firstY + (pitch * row);

    private Surd Along(int place) => firstX + firstY + (pitch * place);

    private void AddBlockRow(int row, int first, int last)
    {
        Surd low = Across(row) - (block / 2),
            high = low + block;
        var strip = Strip(low, high);
        Surd start = Along(first) - (block / 2),
            end = Along(last) + (block / 2);
        for (var after = sashing.Outer ? first - 1 : first; after < last + (sashing.Outer ? 1 : 0); after++)
        {
            var from = Along(after) + (block / 2);
            Add($"frame/sash/row/{(2 * row) + 1}/{after - first + 2}", sashing.Role, Part(low, high, from, from + sash));
        }

        if (sashing.Outer)
        {
            start -= sash;
            end += sash;
        }

        AddEdge($"row/{(2 * row) + 1}/start", HalfPlaneCut.Below(strip, 1, 1, start));
        AddEdge($"row/{(2 * row) + 1}/end", HalfPlaneCut.Below(strip, -1, -1, -end));
    }

    private void AddSashRow(int above, (int First, int Last)? up, (int First, int Last)? down)
    {
        var number = (2 * above) + 2;
        Surd low = Across(above) + (block / 2),
            high = low + sash;
        var strip = Strip(low, high);
        // All round, a sash lies along every block; else only where there is one on either side.
        var (first, last) = (up, down) switch
        {
            ({ } a, { } b) when sashing.Outer => (Math.Min(a.First, b.First), Math.Max(a.Last, b.Last)),
            ({ } a, { } b) => (Math.Max(a.First, b.First), Math.Min(a.Last, b.Last)),
            _ => (up ?? down)!.Value,
        };
        if (first > last)
        {
            AddEdge($"row/{number}/all", strip);
            return;
        }

        Surd start = Along(first) - (block / 2),
            end = Along(last) + (block / 2);
        var (from, to) = sashing is { Outer: true, Halved: false } ? (start - sash, end + sash) : (start, end);
        if (sashing.Cornerstone is { } post)
        {
            for (var place = first; place <= last; place++)
            {
                var at = Along(place) - (block / 2);
                Add($"frame/sash/row/{number}/{place - first + 1}", sashing.Role, Part(low, high, at, at + block));
            }

            var posts = 1;
            for (var at = from < start ? from : start + block; at < to; at += pitch)
            {
                Add($"frame/post/row/{number}/{posts++}", post, Part(low, high, at, at + sash));
            }
        }
        else
        {
            Add($"frame/sash/row/{number}/1", sashing.Role, Part(low, high, from, to));
        }

        // Cornerstones that the edge halves take what is over with them.
        var role = sashing is { Outer: true, Halved: true } ? sashing.Cornerstone ?? sashing.Role : null;
        AddEdge($"row/{number}/start", HalfPlaneCut.Below(strip, 1, 1, from), role);
        AddEdge($"row/{number}/end", HalfPlaneCut.Below(strip, -1, -1, -to), role);
    }

    /// <summary>All of the center between two lines across the rows.</summary>
    private Polygon? Strip(Surd low, Surd high) => HalfPlaneCut.Below(HalfPlaneCut.Below(shape.Polygon(), 1, -1, high), -1, 1, -low);

    /// <summary>A rectangle of the rows, counterclockwise.</summary>
    private static Polygon Part(Surd low, Surd high, Surd from, Surd to)
    {
        static Point At(Surd across, Surd along) => new((along + across) / 2, (along - across) / 2);
        return new([At(low, from), At(high, from), At(high, to), At(low, to)]);
    }

    private void Add(string id, string role, Polygon part) => patches.Add(new(new(id), role, part));

    private void AddEdge(string id, Polygon? part, string? role = null)
    {
        if (part is not null)
        {
            patches.Add(new(new($"frame/setting/{id}"), role ?? setting.Triangles!, part));
        }
    }
}
