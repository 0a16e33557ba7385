using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Kitwright.Kits;
using Kitwright.Plans;
using Kitwright.Tests.House;
using Kitwright.Tests.Plans;
using Xunit;

namespace Kitwright.Tests.Kits;

/// <summary>The published schema of kits against the records that are written.</summary>
public sealed class KitSchemaTest
{
    private static readonly string Text = Repository.Read("docs", "schema", "kits.v1.schema.json");

    [Fact]
    public void It_is_a_schema_of_draft_2020_12()
    {
        using var json = JsonDocument.Parse(Text);
        Assert.True(MetaSchemas.Draft202012.Evaluate(json.RootElement).IsValid);
    }

    [Fact]
    public void It_has_the_fields_of_the_records() =>
        Rule.Holds(SchemaFields.Differences(JsonNode.Parse(Text)!, Reached(typeof(KitPlan)), t => SchemaFields.Camel(t.Name)));

    [Fact]
    public void Any_outcome_as_written_is_valid()
    {
        var schema = JsonSchema.FromText(Text);
        for (var seed = 0; seed < 20; seed++)
        {
            var plan = (KitPlan)new Specimen(seed).Make(typeof(KitPlan));
            using var document = JsonSerializer.SerializeToDocument(
                new { format = KitPlan.Format, version = KitPlan.Version, kits = plan, findings = Array.Empty<object>() },
                PlanJson.Options
            );
            Assert.True(schema.Evaluate(document.RootElement).IsValid);
        }
    }

    /// <summary>The record and all records of the kits that its fields lead to.</summary>
    private static IEnumerable<Type> Reached(Type record)
    {
        var found = new HashSet<Type>();
        var open = new Queue<Type>([record]);
        while (open.TryDequeue(out var type))
        {
            if (type.Namespace == typeof(KitPlan).Namespace && type.IsClass && found.Add(type))
            {
                foreach (var property in type.GetProperties())
                {
                    open.Enqueue(Specimen.IsArray(property.PropertyType) ? property.PropertyType.GetGenericArguments()[0] : property.PropertyType);
                }
            }
        }

        return found;
    }
}
