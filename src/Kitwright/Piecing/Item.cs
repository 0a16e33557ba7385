using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>
/// Something that lies in a region to be pieced: a patch of one role, or a whole block.
/// </summary>
/// <param name="Shape">Its outline in finished size, counterclockwise, in the region's coordinates.</param>
/// <param name="Role">The role of a patch; null for a block.</param>
/// <param name="Block">The id of a block; null for a patch.</param>
/// <param name="Frame">From block coordinates to the region's; meaningful for blocks only.</param>
internal sealed record Item(Polygon Shape, string? Role, string? Block, Motion Frame)
{
    /// <summary>The number of the border that the patch belongs to, from the inside; 0 for none.</summary>
    public int Border { get; init; }

    public bool InBorder => Border > 0;

    /// <summary>Round which circuit of the top it lies, from the inside: coping strips before their border's units.</summary>
    public int Ring { get; init; }

    /// <summary>Whether it is cut in one piece along the selvage.</summary>
    public bool Lengthwise { get; init; }

    /// <summary>Whether it is a setting triangle, which is cut generous and trimmed when the center is squared up.</summary>
    public bool InSetting { get; init; }

    /// <summary>Of a patch of a directional print, which way its up must run; null for any other.</summary>
    public PrintUp? Up { get; init; }

    /// <summary>Of a block whose prints stand upright in the quilt: by how many quarters it is turned from how it is drawn.</summary>
    public int Turned { get; init; }

    public static Item OfPatch(Plans.Patch patch) =>
        new(patch.Shape, patch.Role, null, Motion.Identity)
        {
            InSetting = patch.Id.Value.StartsWith("frame/setting/", StringComparison.Ordinal),
        };

    /// <summary>A patch of the frame: what its border says of its grain goes with it.</summary>
    public static Item OfFrame(Plans.Patch patch, ImmutableArray<Border> borders)
    {
        string[] path = patch.Id.Value.Split('/');
        if (path is not ["frame", "border", var number, ..] || !int.TryParse(number, out var n) || n > borders.Length)
        {
            return OfPatch(patch);
        }

        // Corner squares are squares, whatever the grain of the strips between them.
        return OfPatch(patch) with { Border = n, Ring = path is [.., "coping", _] ? (2 * n) - 1 : 2 * n, Lengthwise = borders[n - 1].Grain == StripGrain.Lengthwise && path.Length == 4 };
    }

    /// <summary>A block where it lies: one that is a unit of a border belongs to it.</summary>
    public static Item OfBlock(Plans.Placement placement, Polygon outline)
    {
        string[] path = placement.Id.Value.Split('/');
        var border = path is ["border", var number, ..] && int.TryParse(number, out var n) ? n : 0;
        return new(outline, null, placement.Block, placement.Motion) { Border = border, Ring = 2 * border };
    }

    public Item Moved(Motion motion) =>
        this with
        {
            Shape = Shape.Moved(motion),
            Frame = Block is null ? Frame : Frame.Then(motion),
            Up = Up?.Moved(motion),
        };

    /// <summary>Equal for items that look alike and lie alike.</summary>
    /// <param name="texts">Coordinates as they were written before: a region has few different ones.</param>
    public string Key(Dictionary<Surd, string> texts) => ContentKey(0) + "|" + ShapeKey(texts);

    /// <summary>What it is, and how it lies once it is turned by quarters.</summary>
    public string ContentKey(int turns)
    {
        if (Role is not null)
        {
            return (Lengthwise ? "l:" : "r:") + Role + (Up is { } up ? $":{up.Turned(2 * turns).Eighths}" : "");
        }

        var frame = turns == 0 ? Frame : Frame.Then(Motion.QuarterTurns(turns));
        return $"b:{Block}{(Turned > 0 ? $"/{Turned}" : "")}:{frame.XX},{frame.XY},{frame.YX},{frame.YY}";
    }

    private string ShapeKey(Dictionary<Surd, string> texts)
    {
        var corners = Shape.Corners;
        var start = 0;
        for (var i = 1; i < corners.Length; i++)
        {
            var byX = corners[i].X.CompareTo(corners[start].X);
            if (byX < 0 || (byX == 0 && corners[i].Y < corners[start].Y))
            {
                start = i;
            }
        }

        return string.Join(';', Enumerable.Range(0, corners.Length).Select(i => Text(corners[(start + i) % corners.Length])));

        string Text(Point corner) => $"({Written(corner.X)}, {Written(corner.Y)})";

        string Written(Surd value)
        {
            if (!texts.TryGetValue(value, out var text))
            {
                texts.Add(value, text = value.ToString());
            }

            return text;
        }
    }
}

/// <summary>Items that together fill a region, with the region's bounding box.</summary>
internal sealed record Region(ImmutableArray<Item> Items)
{
    private (Point Low, Point High)? bounds;

    public (Point Low, Point High) Bounds => bounds ??= BoundsOf(Items);

    public Surd Width => Bounds.High.X - Bounds.Low.X;
    public Surd Height => Bounds.High.Y - Bounds.Low.Y;

    /// <summary>Those of its items that are named by bits.</summary>
    public Region Part(ulong some) => new([.. Items.Where((_, i) => (some >> i & 1) == 1)]);

    public Region Moved(Motion motion) => new([.. Items.Select(i => i.Moved(motion))]);

    /// <summary>Twice the covered area.</summary>
    public Surd TwiceArea => Items.Aggregate(Surd.Zero, (sum, item) => sum + item.Shape.TwiceSignedArea);

    /// <summary>True where the items fill their bounding box.</summary>
    public bool IsRectangle => TwiceArea == 2 * Width * Height;

    /// <summary>True where they fill it and its sides are rational: width and height then say all about its outline.</summary>
    public bool IsOnRuler => IsRectangle && Width.IsRational && Height.IsRational;

    public string Key()
    {
        var texts = new Dictionary<Surd, string>();
        return string.Join('\n', Items.Select(i => i.Key(texts)).Order(StringComparer.Ordinal));
    }

    private static (Point, Point) BoundsOf(ImmutableArray<Item> items)
    {
        var (low, high) = items[0].Shape.Bounds();
        foreach (var item in items.AsSpan()[1..])
        {
            var (from, to) = item.Shape.Bounds();
            low = new(from.X < low.X ? from.X : low.X, from.Y < low.Y ? from.Y : low.Y);
            high = new(to.X > high.X ? to.X : high.X, to.Y > high.Y ? to.Y : high.Y);
        }

        return (low, high);
    }
}
