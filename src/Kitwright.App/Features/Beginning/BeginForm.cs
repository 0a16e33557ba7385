using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.App.Features.Beginning;

/// <summary>What a new quilt is asked to be, as somebody typed it; what is left out is as usual.</summary>
/// <param name="Units">"in" or "cm".</param>
public sealed record BeginForm(string? Name, string? Units, string? Size, string? Columns, string? Rows, string? Sashing, string? Border)
{
    /// <summary>What can be read of it, and a finding for each field that cannot.</summary>
    public (NewQuilt Asked, ImmutableArray<Finding> Findings) Read(BookBlock block, LengthUnit usual)
    {
        var units = Units switch
        {
            "cm" => LengthUnit.Centimeter,
            "in" => LengthUnit.Inch,
            _ => usual,
        };
        var start = NewQuilt.With(block, units);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var asked = start with
        {
            Name = string.IsNullOrWhiteSpace(Name) ? start.Name : Name.Trim(),
            BlockWidth = Measure("size", Size, start.BlockWidth),
            Columns = Count("columns", Columns, start.Columns),
            Rows = Count("rows", Rows, start.Rows),
            Sashing = Measure("sashing", Sashing, start.Sashing),
            Border = Measure("border", Border, start.Border),
        };
        return (asked, findings.ToImmutable());

        Length Measure(string place, string? text, Length otherwise)
        {
            if (string.IsNullOrWhiteSpace(text) || LengthText.TryParse(text, out otherwise, units))
            {
                return otherwise;
            }

            Refuse(place, text);
            return start.BlockWidth;
        }

        int Count(string place, string? text, int otherwise)
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                return otherwise;
            }

            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            {
                return count;
            }

            Refuse(place, text);
            return otherwise;
        }

        void Refuse(string place, string text) =>
            findings.Add(Finding.Of("begin.measure", place, ("text", text.Length > 40 ? text[..40] + "…" : text)));
    }
}
