using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts.Reading;

/// <summary>The top level of a quilt file: names, units, roles and colorways.</summary>
internal static class QuiltReader
{
    private static Length DefaultSeam(LengthUnit units) => units == LengthUnit.Centimeter ? Length.Millimeters(new(15, 2)) : Length.Inches(0, 1, 4);

    private static Length DefaultRulerStep(LengthUnit units) => units == LengthUnit.Centimeter ? Length.Millimeters(5) : Length.Inches(0, 1, 8);

    private enum Units
    {
        Inch,
        Centimeter,
    }

    public static Quilt Read(Node node)
    {
        using var fields = node.Fields();
        // Units come first: they say what bare numbers mean.
        var units = fields.Optional("units")?.OneOf<Units>() == Units.Centimeter ? LengthUnit.Centimeter : LengthUnit.Inch;
        node.Source.Units = units;
        FileHead.Check(fields, QuiltFile.Format, QuiltFile.Version, node.Source.Report);
        return new(
            fields.Required("name").Text(),
            fields.Optional("note")?.Text(QuiltLimits.Note),
            units,
            fields.Optional("seam")?.Size() ?? DefaultSeam(units),
            fields.Optional("rulerStep")?.Size() ?? DefaultRulerStep(units),
            fields.Optional("licensed") is { } license ? ReadLicense(license) : null,
            [.. fields.Required("roles").Items(1, QuiltLimits.Roles).Select(ReadRole)],
            BlockReader.ReadAll(fields.Required("blocks")),
            SettingReader.Read(fields.Required("setting")),
            [.. fields.Optional("borders")?.Items(0, QuiltLimits.Borders).Select(FinishReader.ReadBorder) ?? []],
            FinishReader.ReadBinding(fields.Required("binding")),
            FinishReader.ReadBacking(fields.Required("backing")),
            ReadTechniques(fields.Optional("techniques")),
            [.. fields.Optional("colorways")?.Items(0, QuiltLimits.Colorways).Select(ReadColorway) ?? []]
        )
        {
            Prints = fields.Optional("prints")?.OneOf<PrintSetting>() ?? PrintSetting.InTheQuilt,
            Pressing = ReadTexts(fields.Optional("pressing")?.Entries(QuiltLimits.Habits) ?? []) is { Count: > 0 } pressing ? pressing : null,
        };
    }

    private static License ReadLicense(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("owner").Text(),
            fields.Required("kits").Flag(),
            fields.Required("preCut").Flag(),
            fields.Required("resize").Flag(),
            fields.Required("showDrawing").Flag(),
            fields.Required("split").Flag()
        )
        {
            Lengths = ReadLengths(fields.Optional("lengths")),
        };
    }

    private static ImmutableSortedDictionary<string, Length> ReadLengths(Node? node)
    {
        var lengths = ImmutableSortedDictionary.CreateBuilder<string, Length>(StringComparer.Ordinal);
        foreach (var (role, length) in node?.Entries(QuiltLimits.Roles) ?? [])
        {
            lengths[role] = length.Size();
        }

        return lengths.ToImmutable();
    }

    public static Role ReadRole(Node node)
    {
        using var fields = node.Fields();
        return new(fields.Required("id").Id(), fields.Required("name").Text(), fields.Optional("value")?.OneOf<Value>())
        {
            Matched = fields.Optional("matched")?.Flag() ?? false,
            Spare = fields.Optional("spare")?.Whole(0, QuiltLimits.SparePieces) ?? 0,
        };
    }

    private static ImmutableSortedDictionary<string, string> ReadTechniques(Node? node) =>
        ReadTexts(node?.Entries(QuiltLimits.Techniques) ?? []);

    private static Colorway ReadColorway(Node node)
    {
        using var fields = node.Fields();
        return new(fields.Required("name").Text(), ReadTexts(fields.Required("fabrics").Entries(QuiltLimits.Roles)));
    }

    private static ImmutableSortedDictionary<string, string> ReadTexts(IEnumerable<(string Key, Node Value)> entries)
    {
        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (key, value) in entries)
        {
            if (!texts.TryAdd(key, value.Text()))
            {
                value.Source.Report.Fault("quilt.field.twice", value.Pointer, ("field", key));
            }
        }

        return texts.ToImmutable();
    }
}
