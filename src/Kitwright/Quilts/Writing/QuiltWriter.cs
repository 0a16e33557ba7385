using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts.Writing;

/// <summary>Writes a quilt file: indented, each point and each row of cells on a line of its own.</summary>
internal sealed class QuiltWriter
{
    private static readonly JsonWriterOptions Indented = new()
    {
        Indented = true,
        NewLine = "\n",
        // Fractions and roots stay readable; files are never pasted into HTML unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly Quilt quilt;
    private readonly Utf8JsonWriter json;
    private readonly Length unit;
    private readonly DrawingWriter drawing;

    private QuiltWriter(Quilt quilt, Utf8JsonWriter json)
    {
        this.quilt = quilt;
        this.json = json;
        unit = LengthText.Of(1, quilt.Units);
        drawing = new(json, unit);
    }

    public static string Write(Quilt quilt)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Indented))
        {
            new QuiltWriter(quilt, json).Write();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private void Write()
    {
        json.WriteStartObject();
        json.WriteString("format", QuiltFile.Format);
        json.WriteNumber("version", QuiltFile.Version);
        json.WriteString("name", quilt.Name);
        WriteOptional("note", quilt.Note);
        drawing.Enum("units", quilt.Units);
        WriteLength("seam", quilt.Seam);
        WriteLength("rulerStep", quilt.RulerStep);
        if (quilt.Licensed is { } license)
        {
            WriteLicense(license);
        }

        drawing.List("roles", quilt.Roles, drawing.Role);
        drawing.List("blocks", quilt.Blocks, WriteBlock);
        WriteSetting(quilt.Setting);
        drawing.List("borders", quilt.Borders, WriteBorder);
        WriteBinding(quilt.Binding);
        WriteBacking(quilt.Backing);
        WriteTexts("techniques", quilt.Techniques);
        if (quilt.Pressing is { } pressing)
        {
            WriteTexts("pressing", pressing);
        }

        if (quilt.Prints != PrintSetting.InTheQuilt)
        {
            drawing.Enum("prints", quilt.Prints);
        }

        drawing.List("colorways", quilt.Colorways, WriteColorway);
        json.WriteEndObject();
    }

    private void WriteLicense(License license)
    {
        json.WriteStartObject("licensed");
        json.WriteString("owner", license.Owner);
        json.WriteBoolean("kits", license.Kits);
        json.WriteBoolean("preCut", license.PreCut);
        json.WriteBoolean("resize", license.Resize);
        json.WriteBoolean("showDrawing", license.ShowDrawing);
        json.WriteBoolean("split", license.Split);
        if (!license.Lengths.IsEmpty)
        {
            json.WriteStartObject("lengths");
            foreach (var (role, length) in license.Lengths)
            {
                WriteLength(role, length);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void WriteBlock(Block block)
    {
        json.WriteString("id", block.Id);
        json.WriteString("name", block.Name);
        WriteLength("width", block.Width);
        WriteLength("height", block.Height);
        drawing.Grid(block.Grid);
        drawing.List("patches", block.Patches, drawing.Patch);
    }

    private void WriteSetting(Setting setting)
    {
        json.WriteStartObject("setting");
        drawing.Enum("kind", setting.Kind);
        json.WriteNumber("columns", setting.Columns);
        json.WriteNumber("rows", setting.Rows);
        json.WriteStartArray("cells");
        foreach (var row in setting.Cells)
        {
            json.WriteRawValue($"[{string.Join(", ", row.Select(CellText))}]");
        }

        json.WriteEndArray();
        if (setting.Sashing is { } sashing)
        {
            json.WriteStartObject("sashing");
            WriteLength("width", sashing.Width);
            json.WriteString("role", sashing.Role);
            WriteOptional("cornerstone", sashing.Cornerstone);
            json.WriteBoolean("outer", sashing.Outer);
            if (sashing.Lines != SashLines.Both)
            {
                drawing.Enum("lines", sashing.Lines);
            }

            if (sashing.Halved)
            {
                json.WriteBoolean("halved", true);
            }

            json.WriteEndObject();
        }

        WriteOptional("triangles", setting.Triangles);
        WriteOptional("halfDrop", setting.HalfDrop);
        json.WriteEndObject();
    }

    private void WriteBorder(Border border)
    {
        WriteLength("width", border.Width);
        json.WriteString("role", border.Role);
        drawing.Enum("style", border.Style);
        WriteOptional("corner", border.Corner);
        drawing.Enum("grain", border.Grain);
        if (border.Units is { } units)
        {
            WriteUnits(units);
        }
    }

    private void WriteUnits(BorderUnits units)
    {
        json.WriteStartObject("units");
        json.WriteString("block", units.Block);
        json.WriteNumber("turns", units.Turns);
        WriteOptional("corner", units.Corner);
        json.WriteBoolean("coping", units.Coping);
        WriteCount("across", units.Across);
        WriteCount("down", units.Down);
        json.WriteBoolean("fromMiddle", units.FromMiddle);
        WriteOptional("alternate", units.Alternate);
        json.WriteEndObject();
    }

    private void WriteCount(string name, int? count)
    {
        if (count is { } number)
        {
            json.WriteNumber(name, number);
        }
    }

    private void WriteBinding(Binding binding)
    {
        json.WriteStartObject("binding");
        json.WriteString("role", binding.Role);
        WriteLength("stripWidth", binding.StripWidth);
        WriteLength("allowance", binding.Allowance);
        drawing.Enum("grain", binding.Grain);
        json.WriteEndObject();
    }

    private void WriteBacking(Backing backing)
    {
        json.WriteStartObject("backing");
        json.WriteString("role", backing.Role);
        WriteLength("overhang", backing.Overhang);
        WriteLength("seam", backing.Seam);
        if (backing.Seams is { } seams)
        {
            drawing.Enum("seams", seams);
        }

        json.WriteEndObject();
    }

    private void WriteColorway(Colorway colorway)
    {
        json.WriteString("name", colorway.Name);
        WriteTexts("fabrics", colorway.Fabrics);
    }

    private void WriteTexts(string name, IEnumerable<KeyValuePair<string, string>> texts)
    {
        json.WriteStartObject(name);
        foreach (var (key, text) in texts)
        {
            json.WriteString(key, text);
        }

        json.WriteEndObject();
    }

    private void WriteOptional(string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }

    private void WriteLength(string name, Length length) => json.WriteString(name, LengthInUnits(length));

    // A centimeter quilt may still hold a length that is a whole fraction of an inch only: exact in either unit.
    private string LengthInUnits(Length length) =>
        quilt.Units == LengthUnit.Centimeter
            ? LengthText.Centimeters(length) + " cm"
            : LengthText.Inches(length) + " in";

    private static string CellText(Cell cell) =>
        cell is { Turns: 0, Mirror: false }
            ? $"\"{cell.Block}\""
            : $$"""{ "block": "{{cell.Block}}", "turns": {{cell.Turns}}, "mirror": {{(cell.Mirror ? "true" : "false")}} }""";
}
