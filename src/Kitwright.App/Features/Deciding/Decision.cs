using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>One value of a quilt that its sentences state and that can be changed there.</summary>
/// <param name="Name">Unique in a quilt: <c>columns</c>, <c>border.2</c>, <c>fabric.star</c>.</param>
/// <param name="Kind">Names the label's template: <c>border</c>.</param>
/// <param name="Index">Which one, where a quilt has several; else 0.</param>
/// <param name="Value">As the control has it now.</param>
/// <param name="Change">The quilt with another value; null where the text is none.</param>
public sealed record Decision(
    string Name,
    string Kind,
    int Index,
    string Value,
    ImmutableArray<Choice> Choices,
    Func<string, Quilt?> Change
)
{
    /// <summary>A number of columns or rows.</summary>
    public static Decision Count(string name, int value, Func<int, Quilt> change) =>
        new(
            name,
            name,
            0,
            Text(value),
            [.. Enumerable.Range(1, 20).Append(value).Distinct().Order().Select(n => new Choice(Text(n), Text(n)))],
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n > 0 ? change(n) : null
        );

    /// <summary>A width on the ruler, offered in steps; the value itself is always among the choices.</summary>
    public static Decision Width(Ruler ruler, string kind, int index, Length value, Length step, Length most, Func<Length, Quilt> change) =>
        new(
            index == 0 ? kind : $"{kind}.{Text(index)}",
            kind,
            index,
            ruler.Value(value),
            [
                .. Enumerable
                    .Range(1, (int)(most / step).Floor())
                    .Select(n => step * n)
                    .Append(value)
                    .Distinct()
                    .Order()
                    .Select(width => new Choice(ruler.Value(width), ruler.Text(width))),
            ],
            text => LengthText.TryParse(text, out var width) && width.Sign > 0 ? change(width) : null
        );

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>One value that may be chosen, and how it is written.</summary>
public sealed record Choice(string Value, string Text);
