using System.Text.Json;
using System.Text.RegularExpressions;
using Kitwright.Findings;

namespace Kitwright.Plans;

/// <summary>
/// A plan as a document: <c>{"format": "kitwright-plan", "version": 1, "plan": {…}}</c>, as
/// docs/schema/plan.v1.schema.json describes it.
/// </summary>
public static partial class PlanFile
{
    public static string Write(QuiltPlan plan) =>
        JsonSerializer.Serialize(new Document(QuiltPlan.Format, QuiltPlan.Version, plan), PlanJson.Indented) + "\n";

    /// <summary>The plan, or what keeps the text from being one. Never throws: a plan may come from anybody.</summary>
    public static Checked<QuiltPlan> Read(string text)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text, Strict);
        }
        catch (JsonException fault)
        {
            var line = (fault.LineNumber ?? 0) + 1;
            return Checked<QuiltPlan>.Failed(Finding.Of("plan.json", $"line {line}", ("line", line)));
        }

        using (document)
        {
            return Read(document.RootElement);
        }
    }

    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 64, AllowDuplicateProperties = false };

    private static Checked<QuiltPlan> Read(JsonElement root)
    {
        if (!Says(root, "format", $"\"{QuiltPlan.Format}\"") || !root.TryGetProperty("plan", out var plan))
        {
            return Checked<QuiltPlan>.Failed(Finding.Of("plan.format", "/format", ("format", QuiltPlan.Format)));
        }

        if (!Says(root, "version", $"{QuiltPlan.Version}"))
        {
            return Checked<QuiltPlan>.Failed(Finding.Of("plan.version", "/version", ("newest", QuiltPlan.Version)));
        }

        try
        {
            return Checked<QuiltPlan>.Of(
                plan.Deserialize<QuiltPlan>(PlanJson.Options) ?? throw new JsonException("Not a plan.")
            );
        }
        catch (JsonException fault)
        {
            return NotAPlanAt("/plan" + Pointer(fault.Path ?? "$"));
        }
        catch (NotSupportedException)
        {
            // The serializer's way to say that a verb does not tell what it does.
            return NotAPlanAt("/plan/sewing");
        }
    }

    private static Checked<QuiltPlan> NotAPlanAt(string place) =>
        Checked<QuiltPlan>.Failed(Finding.Of("plan.shape", place, ("place", place)));

    private static bool Says(JsonElement root, string name, string value) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty(name, out var found) && found.GetRawText() == value;

    /// <summary>"$.pieces[3].width" as a JSON pointer (RFC 6901): "/pieces/3/width".</summary>
    private static string Pointer(string path) => Step().Replace(path[1..], "/$1$2");

    [GeneratedRegex(@"\.([^.\[\]]+)|\[(\d+)\]")]
    private static partial Regex Step();

    private sealed record Document(string Format, int Version, QuiltPlan Plan);
}
