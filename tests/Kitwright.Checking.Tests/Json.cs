using System.Text.Json;
using Kitwright.Plans;

namespace Kitwright.Checking.Tests;

/// <summary>Plans as the text of a plan file.</summary>
internal static class Json
{
    public static string Of(QuiltPlan plan) => JsonSerializer.Serialize(plan, PlanJson.Options);

    public static QuiltPlan Read(string text) => JsonSerializer.Deserialize<QuiltPlan>(text, PlanJson.Options)!;
}
