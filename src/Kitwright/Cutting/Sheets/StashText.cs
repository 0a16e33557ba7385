using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>
/// Cloth as a quilter writes it down, one kind a line: "3 fat quarters", "blue: 1 1/2 yd of 42", "20 squares 5",
/// "12 strips 2 1/2 x 42", "4 of 18 x 21", "9 x 22", "1.5 m of 110 cm". A name before a colon says which fabric it is.
/// </summary>
/// <remarks>
/// A fat quarter is 18 in of the length by 22 in of the width, a fat eighth 9 by 22 in [QC-MC]; who has smaller ones
/// writes the size. Without a width a yard or a strip is as wide as cloth usually is. Never throws.
/// </remarks>
public static partial class StashText
{
    public const int MostLines = 500;

    private const int MostCharacters = 20_000;
    private const int LongestName = 80;

    /// <summary>Characters of a line after its name; patterns that look back again take no time on so few.</summary>
    private const int LongestSize = 120;

    /// <param name="usualWidth">Of yards and strips whose width is not said.</param>
    /// <param name="unit">Of sizes without one.</param>
    public static Checked<ClothList> Read(string text, Length usualWidth, LengthUnit unit = LengthUnit.Inch)
    {
        if (text.Length > MostCharacters)
        {
            return Checked<ClothList>.Failed(Finding.Of("stash.too-long", "line 1", ("most", MostCharacters)));
        }

        var findings = ImmutableArray.CreateBuilder<Finding>();
        var sheets = ImmutableArray.CreateBuilder<StockSheet>();
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i < lines.Length && i < MostLines; i++)
        {
            var line = lines[i].Trim();
            if (line.Length == 0)
            {
                continue;
            }

            if (Read(line, i + 1, usualWidth, unit) is { } sheet)
            {
                sheets.Add(sheet);
            }
            else
            {
                findings.Add(Finding.Of("stash.line", $"line {i + 1}", ("text", line.Length > LongestName ? line[..LongestName] + "…" : line)));
            }
        }

        return new(sheets.Count == 0 ? null : new(sheets.ToImmutable()), findings.ToImmutable());
    }

    /// <summary>Such a line for equal rectangles, for who wants to use leftovers again.</summary>
    /// <param name="unit">Inch, or centimeter: then to the whole millimeter below, since no more cloth may be told than there is.</param>
    public static string Line(Length width, Length height, int count, LengthUnit unit = LengthUnit.Inch) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} of {Told(height, unit)} x {Told(width, unit)}");

    private static string Told(Length length, LengthUnit unit) =>
        unit == LengthUnit.Centimeter
            ? $"{LengthText.Centimeters(Length.Millimeters((length / Length.Millimeters(1)).Floor()))} cm"
            : LengthText.Inches(length);

    private static StockSheet? Read(string line, int number, Length usualWidth, LengthUnit unit)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        var name = colon < 0 ? "" : line[..colon].Trim();
        var what = line[(colon + 1)..].Trim();
        if (name.Length > LongestName || what.Length > LongestSize || name.Any(char.IsControl) || Size(what, usualWidth, unit) is not var (match, width, height))
        {
            return null;
        }

        var count = CountOf(match);
        if (count is < 1 or > ClothList.MostOfOneKind || width.Sign <= 0 || height.Sign <= 0 || width > ClothIntake.LongestPiece || height > ClothIntake.LongestPiece)
        {
            return null;
        }

        return new(new PathId("cloth").Child("line", number), name.Length == 0 ? Unnumbered(match) : name, width, height, count, width.InInches * height.InInches);
    }

    private static (Match Match, Length Width, Length Height)? Size(string what, Length usualWidth, LengthUnit unit)
    {
        if (Precut().Match(what) is { Success: true } precut)
        {
            var height = precut.Groups["kind"].Value.StartsWith('q') ? 18 : 9;
            return (precut, Length.Inches(22), Length.Inches(height));
        }

        if (Yards().Match(what) is { Success: true } yards)
        {
            return In(yards.Groups["length"].Value, LengthUnit.Inch) is { } length && Across(yards.Groups["width"], usualWidth, unit) is { } width
                ? (yards, width, yards.Groups["unit"].Value[0] is 'm' or 'M' ? Length.Millimeters(length.InInches * 1000) : length * 36)
                : null;
        }

        if (Squares().Match(what) is { Success: true } squares)
        {
            return In(squares.Groups["side"].Value, unit) is { } side ? (squares, side, side) : null;
        }

        if (Strips().Match(what) is { Success: true } strips)
        {
            return In(strips.Groups["height"].Value, unit) is { } height && Across(strips.Groups["width"], usualWidth, unit) is { } width
                ? (strips, width, height)
                : null;
        }

        return
            Rectangles().Match(what) is { Success: true } rectangles
            && In(rectangles.Groups["height"].Value, unit) is { } down
            && In(rectangles.Groups["width"].Value, unit) is { } across
            ? (rectangles, across, down)
            : null;
    }

    /// <summary>"3 fat quarters" is called "fat quarters", "4 of 18 x 21" is "18 x 21".</summary>
    private static string Unnumbered(Match match)
    {
        var count = match.Groups["count"];
        var rest = count.Success ? match.Value[(count.Index + count.Length)..].Trim() : match.Value;
        return count.Success && rest.StartsWith("of ", StringComparison.OrdinalIgnoreCase) ? rest[3..].Trim() : rest;
    }

    private static Length? Across(Group given, Length usual, LengthUnit unit) => given.Success ? In(given.Value, unit) : usual;

    private static Length? In(string text, LengthUnit unit) => LengthText.TryParse(text, out var length, unit) ? length : null;

    private static int CountOf(Match match) =>
        !match.Groups["count"].Success ? 1
        : int.TryParse(match.Groups["count"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count
        : 0;

    private const string Number = @"[0-9¼½¾⅓⅔⅛⅜⅝⅞][0-9 ./¼½¾⅓⅔⅛⅜⅝⅞-]*(?:\s*(?:in|inch|inches|""|cm|mm))?";

    private const RegexOptions Lenient = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    [GeneratedRegex(@"^(?:(?<count>\d+)\s+)?fat\s+(?<kind>quarter|eighth)s?$", Lenient)]
    private static partial Regex Precut();

    [GeneratedRegex(@"^(?<length>[0-9¼½¾⅓⅔⅛⅜⅝⅞][0-9 ./¼½¾⅓⅔⅛⅜⅝⅞-]*)\s*(?<unit>yd|yds|yard|yards|m|meter|meters|metre|metres)\.?(?:\s+(?:of|x|×|wide)?\s*(?<width>" + Number + @"))?(?:\s+wide)?$", Lenient)]
    private static partial Regex Yards();

    [GeneratedRegex(@"^(?:(?<count>\d+)\s+)?squares?\s+(?:of\s+)?(?<side>" + Number + @")$", Lenient)]
    private static partial Regex Squares();

    [GeneratedRegex(@"^(?:(?<count>\d+)\s+)?strips?\s+(?:of\s+)?(?<height>" + Number + @")(?:\s*[x×]\s*(?<width>" + Number + @"))?$", Lenient)]
    private static partial Regex Strips();

    [GeneratedRegex(@"^(?:(?<count>\d+)\s+of\s+)?(?<height>" + Number + @")\s*[x×]\s*(?<width>" + Number + @")$", Lenient)]
    private static partial Regex Rectangles();
}
