using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Writing;

/// <summary>Writes what the quilt file and the block file have in common: roles, and patches by their corners.</summary>
/// <param name="unit">What one unit of a written coordinate stands for.</param>
internal sealed class DrawingWriter(Utf8JsonWriter json, Length unit)
{
    public void Role(Role role)
    {
        json.WriteString("id", role.Id);
        json.WriteString("name", role.Name);
        if (role.Value is { } value)
        {
            Enum("value", value);
        }

        if (role.Matched)
        {
            json.WriteBoolean("matched", true);
        }

        if (role.Spare > 0)
        {
            json.WriteNumber("spare", role.Spare);
        }
    }

    public void Grid(Grid grid)
    {
        json.WriteStartObject("grid");
        json.WriteNumber("columns", grid.Columns);
        json.WriteNumber("rows", grid.Rows);
        json.WriteEndObject();
    }

    public void Patch(BlockPatch patch)
    {
        json.WriteString("id", patch.Id);
        json.WriteString("role", patch.Role);
        Line("corners", $"[{string.Join(", ", patch.Corners.Select(PointText))}]");
        if (patch.Arcs.Length > 0)
        {
            List("arcs", patch.Arcs, Arc);
        }
    }

    public void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public void Enum<T>(string name, T value)
        where T : struct, Enum => json.WriteString(name, JsonNamingPolicy.CamelCase.ConvertName(value.ToString()));

    private void Arc(Arc arc)
    {
        json.WriteNumber("edge", arc.Edge);
        Line("center", PointText(arc.Center));
        json.WriteBoolean("clockwise", arc.Clockwise);
    }

    private void Line(string name, string rawJson)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(rawJson);
    }

    private string PointText(Point point) => $"[{Quoted(point.X / unit)}, {Quoted(point.Y / unit)}]";

    private static string Quoted(Surd value) => $"\"{SurdText.Format(value)}\"";
}
