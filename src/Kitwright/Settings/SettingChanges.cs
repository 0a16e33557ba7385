using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>A quilt with its blocks laid another way; whatever the setting does not touch stays.</summary>
public static class SettingChanges
{
    /// <summary>The turns of one repeat, over whatever blocks the cells hold.</summary>
    public static Quilt Turned(Quilt quilt, ImmutableArray<ImmutableArray<Position>> turns)
    {
        var old = quilt.Setting.Cells;
        int rows = Multiple(old.Length, turns.Length),
            columns = Multiple(old[0].Length, turns[0].Length);
        return With(
            quilt,
            rows,
            columns,
            (row, column) =>
            {
                var position = turns[row % turns.Length][column % turns[0].Length];
                return quilt.Setting.CellAt(row, column) with { Turns = position.Turns, Mirror = position.Mirror };
            }
        );
    }

    /// <summary>A classic setting; null where the block has no light and dark half.</summary>
    public static Quilt? Classic(Quilt quilt, ClassicSetting setting)
    {
        var block = quilt.Setting.Cells[0][0].Block;
        if (DarkHalf.Of(quilt.Block(block), ValueOf(quilt)) is not { } dark)
        {
            return null;
        }

        var cells = ClassicSettings.Cells(setting, block, dark, quilt.Setting.Columns, quilt.Setting.Rows);
        return quilt with { Setting = quilt.Setting with { Cells = cells } };
    }

    /// <summary>The classic setting in which a quilt's blocks lie; null for any other.</summary>
    public static ClassicSetting? ClassicOf(Quilt quilt)
    {
        var setting = quilt.Setting;
        var block = setting.Cells[0][0].Block;
        if (setting.Kind != SettingKind.Straight || setting.Cells.Any(row => row.Any(cell => cell.Block != block || cell.Mirror)))
        {
            return null;
        }

        foreach (var classic in Enum.GetValues<ClassicSetting>())
        {
            if (Classic(quilt, classic)?.Setting is { } laid && Alike(setting, laid))
            {
                return classic;
            }
        }

        return null;
    }

    /// <summary>More or fewer columns and rows; a classic figure is drawn anew round its own middle.</summary>
    public static Quilt Counted(Quilt quilt, int columns, int rows)
    {
        var classic = ClassicOf(quilt);
        var counted = Fewest(quilt with { Setting = quilt.Setting with { Columns = columns, Rows = rows } });
        return classic is { } figure ? Classic(counted, figure) ?? counted : counted;
    }

    /// <summary>Counts of border units that were chosen for another size are found anew.</summary>
    public static Quilt Fewest(Quilt quilt) =>
        quilt.Borders.All(border => border.Units is null)
            ? quilt
            : quilt with
            {
                Borders = [.. quilt.Borders.Select(border => border.Units is { } units ? border with { Units = units with { Across = null, Down = null } } : border)],
            };

    public static Quilt EdgeToEdge(Quilt quilt) => quilt with { Setting = quilt.Setting with { Sashing = null } };

    /// <param name="outer">Whether sashing also runs round the outside.</param>
    public static Quilt Sashed(Quilt quilt, Length width, bool posts, bool outer)
    {
        var old = quilt.Setting.Sashing;
        var role = old?.Role ?? Background(quilt);
        return quilt with
        {
            Setting = quilt.Setting with
            {
                HalfDrop = null,
                Sashing = new(width, role, posts ? old?.Cornerstone ?? Contrast(quilt, role) : null, outer, outer && quilt.Setting.Kind == SettingKind.OnPoint),
            },
        };
    }

    /// <summary>Strips between columns only, or between rows only.</summary>
    public static Quilt Lined(Quilt quilt, Length width, SashLines lines)
    {
        var sashed = Sashed(Straight(quilt), width, posts: false, outer: false);
        return sashed with { Setting = sashed.Setting with { HalfDrop = null, Sashing = sashed.Setting.Sashing! with { Lines = lines } } };
    }

    /// <summary>Every other column dropped by half a block, its ends filled with the background; edge to edge where rows were sashed.</summary>
    public static Quilt HalfDropped(Quilt quilt)
    {
        var straight = Straight(quilt);
        var sashing = straight.Setting.Sashing is { Lines: SashLines.Columns } columns ? columns : null;
        return straight with { Setting = straight.Setting with { HalfDrop = Background(quilt), Sashing = sashing } };
    }

    /// <summary>Rows level again, and whatever ran in one direction only gone.</summary>
    public static Quilt Level(Quilt quilt) =>
        quilt with
        {
            Setting = quilt.Setting with { HalfDrop = null, Sashing = quilt.Setting.Sashing is { Lines: SashLines.Both } sashing ? sashing : null },
        };

    /// <summary>
    /// One block with borders round it: the blocks of the cells are the units of the rings, or else half-square triangles.
    /// </summary>
    public static Quilt? Ringed(Quilt quilt)
    {
        var center = quilt.Block(quilt.Setting.Cells[0][0].Block);
        var alone = Counted(AllAlike(EdgeToEdge(Level(Straight(quilt)))), 1, 1) with { Borders = [] };
        var plain = BorderChanges.Added(alone);
        var ringed = plain is null ? null : BorderChanges.Added(plain);
        if (ringed is null)
        {
            return null;
        }

        var grid = center.Width / center.Grid.Columns;
        var ring = ringed.Borders[0] with { Width = grid };
        ringed = ringed with { Borders = [ring, ringed.Borders[1] with { Width = grid * 2 }] };
        // Units in the corners keep the ring alike on all sides.
        var pieced = BorderChanges.Pieced(ringed, 1, "half-square") is { } run ? BorderChanges.UnitCorners(run, 1) : null;
        var framed = pieced is null ? null : BorderChanges.Added(BorderChanges.Changed(pieced, 1, units => units with { FromMiddle = true })!);
        return framed is null ? null : framed with { Borders = framed.Borders.SetItem(2, framed.Borders[2] with { Width = grid * 2 }) };
    }

    public static Quilt Straight(Quilt quilt) =>
        quilt with
        {
            Setting = quilt.Setting with { Kind = SettingKind.Straight, Triangles = null, Sashing = Halved(quilt, false) },
        };

    public static Quilt OnPoint(Quilt quilt) =>
        quilt with
        {
            Setting = quilt.Setting with
            {
                Kind = SettingKind.OnPoint,
                HalfDrop = null,
                Triangles = quilt.Setting.Triangles ?? Background(quilt),
                Sashing = Halved(quilt, quilt.Setting.Sashing is { Outer: true }) is { } sashing ? sashing with { Lines = SashLines.Both } : null,
            },
        };

    // Whole cornerstones at an edge on point leave odd shapes beside them, so halved ones are the usual.
    private static Sashing? Halved(Quilt quilt, bool halved) => quilt.Setting.Sashing is { } sashing ? sashing with { Halved = halved } : null;

    /// <summary>
    /// Every other cell holds a plain square of the block's size. On point the short rows do, so that the blocks lie in
    /// straight columns.
    /// </summary>
    public static Quilt AlternatingWithPlain(Quilt quilt)
    {
        var block = quilt.Block(quilt.Setting.Cells[0][0].Block);
        const string Id = "plain";
        var corners = Geometry.Polygon.Rectangle(0, 0, block.Width, block.Height).Corners;
        var plain = new Block(Id, Id, block.Width, block.Height, new(1, 1), [new("1", Background(quilt), corners, [])]);
        var mixed = quilt with { Blocks = [.. quilt.Blocks.Where(b => b.Id != Id), plain] };
        return Alternating(mixed, block.Id, Id);
    }

    /// <summary>Two blocks in turn, like the squares of a chessboard; on point in long and short rows.</summary>
    public static Quilt Alternating(Quilt quilt, string first, string second) =>
        With(
            quilt,
            2,
            2,
            (row, column) => new((quilt.Setting.Kind == SettingKind.OnPoint ? row : row + column) % 2 == 0 ? first : second, 0, false)
        );

    /// <summary>One kind of block in every cell, as it is drawn.</summary>
    public static Quilt AllAlike(Quilt quilt) => With(quilt, 1, 1, (_, _) => new(quilt.Setting.Cells[0][0].Block, 0, false));

    public static Func<string, Value?> ValueOf(Quilt quilt)
    {
        var values = quilt.Roles.ToDictionary(role => role.Id, role => role.Value, StringComparer.Ordinal);
        return role => values.GetValueOrDefault(role);
    }

    /// <summary>The role that covers most of the first block, light ones before others.</summary>
    private static string Background(Quilt quilt)
    {
        var block = quilt.Block(quilt.Setting.Cells[0][0].Block);
        var value = ValueOf(quilt);
        return block
            .Patches.GroupBy(p => p.Role, p => new Geometry.Polygon(p.Corners).CounterClockwise().TwiceSignedArea, StringComparer.Ordinal)
            .OrderByDescending(areas => value(areas.Key) == Value.Light)
            .ThenByDescending(areas => areas.Aggregate(Geometry.Surd.Zero, (sum, area) => sum + area))
            .First()
            .Key;
    }

    private static string Contrast(Quilt quilt, string role)
    {
        var value = ValueOf(quilt);
        var used = quilt.Blocks.SelectMany(b => b.Patches).Select(p => p.Role).Distinct().Where(r => r != role).ToList();
        return used.Find(r => value(r) == Value.Dark) ?? used.FirstOrDefault() ?? role;
    }

    private static bool Alike(Setting one, Setting other) =>
        Enumerable
            .Range(0, one.Rows)
            .All(row => Enumerable.Range(0, one.Columns).All(column => one.CellAt(row, column) == other.CellAt(row, column)));

    private static Quilt With(Quilt quilt, int rows, int columns, Func<int, int, Cell> cell) =>
        quilt with
        {
            Setting = quilt.Setting with
            {
                Cells = [.. Enumerable.Range(0, rows).Select(r => Enumerable.Range(0, columns).Select(c => cell(r, c)).ToImmutableArray())],
            },
        };

    private static int Multiple(int a, int b)
    {
        var both = a;
        while (both % b != 0)
        {
            both += a;
        }

        // Repeats stay small enough for a file.
        return Math.Min(both, QuiltLimits.CellsAcross);
    }
}
