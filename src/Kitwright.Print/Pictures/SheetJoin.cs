using System.Globalization;
using Kitwright.Print.Drawing;
using Kitwright.Print.Pages;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>Where a sheet is joined to one of its neighbors, with the numbers of both at a half diamond in its middle.</summary>
internal sealed record SheetJoin(SetText Word, Place From, Place To, Place Inward)
{
    public const double Diamond = 7;
    private const double Gap = 4;

    public Place Middle => (From + To) * 0.5;

    public Place Along => new(Inward.Y, Inward.X);

    /// <summary>The middle of the numbers.</summary>
    public Place At => Middle + (Inward * (Diamond + Gap + (Inward.X == 0 ? Word.Style.CapHeight / 2 : Word.Width / 2)));

    public static IEnumerable<SheetJoin> Of(SheetTile tile)
    {
        double width = tile.Window.Width,
            height = tile.Window.Height;
        (bool There, int Other, Place From, Place To, Place In)[] sides =
        [
            (tile.Column > 0, tile.Number - 1, new(0, 0), new(0, height), new(1, 0)),
            (tile.Column < tile.Across - 1, tile.Number + 1, new(width, 0), new(width, height), new(-1, 0)),
            (tile.Row > 0, tile.Number - tile.Across, new(0, 0), new(width, 0), new(0, 1)),
            (tile.Row < tile.Down - 1, tile.Number + tile.Across, new(0, height), new(width, height), new(0, -1)),
        ];
        return
            from side in sides
            where side.There
            let first = Math.Min(tile.Number, side.Other)
            let second = Math.Max(tile.Number, side.Other)
            select new SheetJoin(SetText.Of(string.Create(CultureInfo.InvariantCulture, $"{first}–{second}"), Look.Label), side.From, side.To, side.In);
    }

    /// <summary>Where a word may stand that would lie on the numbers: beside them along the join, on its own side of them.</summary>
    public Place BesideNumbers(SetText word, Place at)
    {
        var off = at - At;
        double clearX = ((word.Width + Word.Width) / 2) + Gap,
            clearY = word.Style.CapHeight + Gap;
        if (Math.Abs(off.X) >= clearX || Math.Abs(off.Y) >= clearY)
        {
            return at;
        }

        return Inward.X == 0
            ? new(At.X + (off.X < 0 ? -clearX : clearX), at.Y)
            : new(at.X, At.Y + (off.Y < 0 ? -clearY : clearY));
    }
}
