using System.Globalization;
using System.Text;

namespace Kitwright.Print.Drawing.Svg;

/// <summary>Path data in few characters: level and plumb lines as H and V, no needless spaces.</summary>
internal sealed class SvgPath(int digits)
{
    private readonly StringBuilder text = new();
    private Place at;

    public string Of(Outline outline, Affine transform)
    {
        foreach (var contour in outline.Contours)
        {
            Start(transform.Apply(contour.Start));
            foreach (var segment in contour.Segments)
            {
                Add(segment.Moved(transform));
            }

            if (contour.Closed)
            {
                text.Append('Z');
            }
        }

        return text.ToString();
    }

    private void Start(Place place)
    {
        text.Append('M').Append(Pair(place));
        at = Rounded(place);
    }

    private void Add(Segment segment)
    {
        var to = Rounded(segment.To);
        if (segment.Curve)
        {
            text.Append('C').Append(Pair(segment.First)).Append(' ').Append(Pair(segment.Second)).Append(' ').Append(Pair(to));
        }
        else if (to.Y == at.Y)
        {
            text.Append('H').Append(Number(to.X, digits));
        }
        else if (to.X == at.X)
        {
            text.Append('V').Append(Number(to.Y, digits));
        }
        else
        {
            text.Append('L').Append(Pair(to));
        }

        at = to;
    }

    private Place Rounded(Place place) => new(Math.Round(place.X, digits), Math.Round(place.Y, digits));

    private string Pair(Place place) => $"{Number(place.X, digits)} {Number(place.Y, digits)}";

    public static string Number(double value, int digits)
    {
        var rounded = Math.Round(value, digits);
        return (rounded == 0 ? 0 : rounded).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
