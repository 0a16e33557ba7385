using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Kitwright.Measure;
using Kitwright.Quilts.Writing;

namespace Kitwright.Blocks;

/// <summary>Writes a block file by its patches, whatever it was drawn from.</summary>
internal static class BlockWriter
{
    private static readonly JsonWriterOptions Indented = new()
    {
        Indented = true,
        NewLine = "\n",
        // Roots stay readable; files are never pasted into HTML unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write(BookBlock block)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Indented))
        {
            // Coordinates are units of the grid: bare numbers.
            Write(block, json, new(json, Length.Inch));
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(BookBlock block, Utf8JsonWriter json, DrawingWriter drawing)
    {
        json.WriteStartObject();
        json.WriteString("format", BlockFile.Format);
        json.WriteNumber("version", BlockFile.Version);
        json.WriteString("id", block.Id);
        json.WriteString("name", block.Name);
        drawing.Enum("family", block.Family);
        if (block.Source is { } source)
        {
            json.WriteString("source", source);
        }

        drawing.Grid(block.Grid);
        drawing.List("roles", block.Roles, drawing.Role);
        drawing.List("patches", block.Patches, drawing.Patch);
        json.WriteEndObject();
    }
}
