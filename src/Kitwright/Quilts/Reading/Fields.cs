using System.Text.Json;

namespace Kitwright.Quilts.Reading;

/// <summary>
/// The named fields of one JSON object. Each is asked for once; on disposal, fields that nobody asked for are noted,
/// so a misspelled name never goes unseen.
/// </summary>
internal sealed class Fields : IDisposable
{
    private readonly Node node;
    private readonly bool isObject;
    private readonly Dictionary<string, JsonElement> unread = new(StringComparer.Ordinal);

    public Fields(Node node, bool isObject)
    {
        this.node = node;
        this.isObject = isObject && node.Json.ValueKind == JsonValueKind.Object;
        if (!this.isObject)
        {
            return;
        }

        foreach (var field in node.Json.EnumerateObject())
        {
            if (!unread.TryAdd(field.Name, field.Value))
            {
                node.Source.Report.Fault("quilt.field.twice", node.Pointer, ("field", field.Name));
            }
        }
    }

    /// <summary>The field, or a reported stand-in.</summary>
    public Node Required(string name)
    {
        if (Optional(name) is { } found)
        {
            return found;
        }

        if (isObject)
        {
            node.Source.Report.Fault("quilt.field.missing", node.Pointer, ("field", name));
        }

        return node.Child(name, default);
    }

    /// <summary>The field, or null where it is missing or null.</summary>
    public Node? Optional(string name) =>
        unread.Remove(name, out var json) && json.ValueKind != JsonValueKind.Null ? node.Child(name, json) : null;

    public void Dispose()
    {
        foreach (var name in unread.Keys.Take(QuiltLimits.Findings))
        {
            node.Source.Report.Note("quilt.field.unknown", node.Pointer, ("field", name.Length <= 40 ? name : name[..40] + "…"));
        }
    }
}
