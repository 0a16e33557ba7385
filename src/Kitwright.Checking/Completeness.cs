using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using Kitwright.Checking.Exact;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Checking;

/// <summary>
/// Nothing that a plan must state is missing, and its numbers are of a size that work has. A plan that was read from a
/// file may have holes where properties were left out; after this rule no other need ask.
/// </summary>
internal static class Completeness
{
    private static readonly ConcurrentDictionary<Type, ImmutableArray<Stated>> Known = new();

    /// <summary>A property that a record states (not one that it computes).</summary>
    private readonly record struct Stated(PropertyInfo Property, string Name, bool MayBeNull);

    public static void Check(QuiltPlan plan, FindingList findings)
    {
        if (plan is null)
        {
            findings.Add("check.plan.missing", "/");
            return;
        }

        Walk(plan, "", findings);
    }

    private static void Walk(object? value, string pointer, FindingList findings)
    {
        switch (value)
        {
            case null:
            case PathId { Value.Length: 0 }:
                findings.Add("check.plan.missing", pointer);
                break;
            case Surd surd when !Fineness.IsStatable(surd):
            case Length length when !Fineness.IsStatable(length.InInches):
                findings.Add("check.plan.number", pointer);
                break;
            case Enum named when !Enum.IsDefined(named.GetType(), named):
                findings.Add("check.plan.missing", pointer);
                break;
            case string or PathId or Surd or Length or Message or Enum or bool or int or long:
                break;
            case IEnumerable list:
                WalkList(list, pointer, findings);
                break;
            default:
                foreach (var stated in Known.GetOrAdd(value.GetType(), PropertiesOf))
                {
                    var part = stated.Property.GetValue(value);
                    if (part is not null || !stated.MayBeNull)
                    {
                        Walk(part, $"{pointer}/{stated.Name}", findings);
                    }
                }

                break;
        }
    }

    private static void WalkList(IEnumerable list, string pointer, FindingList findings)
    {
        if (list.GetType().GetProperty(nameof(ImmutableArray<int>.IsDefault))?.GetValue(list) is true)
        {
            findings.Add("check.plan.missing", pointer);
            return;
        }

        var index = 0;
        foreach (var item in list)
        {
            Walk(item, $"{pointer}/{index++}", findings);
        }
    }

    private static ImmutableArray<Stated> PropertiesOf(Type type)
    {
        var context = new NullabilityInfoContext();
        return
        [
            .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(p => p.CanWrite)
                .Select(p => new Stated(
                    p,
                    JsonNamingPolicy.CamelCase.ConvertName(p.Name),
                    context.Create(p).ReadState == NullabilityState.Nullable
                )),
        ];
    }
}
