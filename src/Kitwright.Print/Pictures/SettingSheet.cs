using System.Collections.Immutable;
using Kitwright.Print.Drawing;
using Kitwright.Quilts;
using Kitwright.Settings;

namespace Kitwright.Print.Pictures;

/// <summary>Settings side by side, each repeated twice both ways so that its figure shows.</summary>
public static class SettingSheet
{
    /// <summary>Blocks are one unit wide, and pictures stand one unit apart.</summary>
    private const double Apart = 1;

    /// <param name="block">A square block.</param>
    public static PictureFile Of(Block block, ImmutableArray<Arrangement> arrangements, Looks looks, Func<string, Paint> fill, string label)
    {
        var side = arrangements.IsEmpty ? 1 : (int)Math.Sqrt(arrangements[0].Looks.Length);
        var across = (int)Math.Ceiling(Math.Sqrt(arrangements.Length));
        double size = 2 * side,
            step = size + Apart;
        var pictures = arrangements.Select(
            (arrangement, i) => Group.At(Apart + (i % across * step), Apart + (i / across * step), Picture(block, arrangement.CellsOf(block.Id, looks), 2 * side, fill))
        );
        var down = (arrangements.Length + across - 1) / Math.Max(across, 1);
        return new(
            new Group([.. pictures]),
            new(0, 0, Apart + (Math.Max(across, 1) * step), Apart + (Math.Max(down, 1) * step)),
            label
        );
    }

    private static Group Picture(Block block, ImmutableArray<ImmutableArray<Cell>> cells, int count, Func<string, Paint> fill)
    {
        var design = Layout.Center([block], new(SettingKind.Straight, count, count, cells, null));
        var scale = 1 / block.Width.InInches.ToDouble();
        return new([QuiltPicture.Of(design, fill, Look.Seam)]) { Transform = Affine.Scale(scale, scale) };
    }
}
