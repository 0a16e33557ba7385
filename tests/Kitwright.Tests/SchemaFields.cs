using System.Text.Json;
using System.Text.Json.Nodes;
using Kitwright.Plans;

namespace Kitwright.Tests;

/// <summary>A published schema against the records it describes, so that neither changes without the other.</summary>
internal static class SchemaFields
{
    /// <param name="name">What the schema calls a record.</param>
    public static IEnumerable<string> Differences(JsonNode schema, IEnumerable<Type> records, Func<Type, string> name)
    {
        foreach (var record in records)
        {
            if (schema["$defs"]![name(record)] is not JsonObject described)
            {
                yield return $"the schema does not describe {name(record)}";
                continue;
            }

            // "do" is the verb's name, which the serializer adds.
            var fields = PlanJson.Options.GetTypeInfo(record).Properties;
            string[] extra = described["properties"]!["do"] is null ? [] : ["do"];
            var written = fields.Select(f => f.Name).Concat(extra);
            var optional = fields.Where(f => f.AssociatedParameter is null && f.Set is not null).Select(f => f.Name).ToHashSet();
            foreach (
                var (what, ours, theirs) in new[]
                {
                    ("fields", written, described["properties"]!.AsObject().Select(p => p.Key)),
                    ("required", written.Where(f => !optional.Contains(f)), described["required"]!.AsArray().Select(n => n!.GetValue<string>())),
                }
            )
            {
                var (x, y) = (Sorted(ours), Sorted(theirs));
                if (x != y)
                {
                    yield return $"{name(record)}, {what}: {x} in the record, {y} in the schema";
                }
            }
        }
    }

    public static string Camel(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);

    private static string Sorted(IEnumerable<string> names) => string.Join(' ', names.Order(StringComparer.Ordinal));
}
