using System.Collections;
using System.Reflection;
using System.Text.Json.Serialization;

namespace Kitwright.Tests.Plans;

/// <summary>Whether two values say the same all the way down, where arrays in records compare by reference.</summary>
internal static class Alike
{
    /// <summary>The place of the first difference, or null.</summary>
    public static string? Difference(object? x, object? y, string place = "")
    {
        if (x is null || y is null || x.GetType() != y.GetType())
        {
            return x is null && y is null ? null : $"{place}: {x ?? "null"} and {y ?? "null"}";
        }

        if (x is string || x.GetType().IsPrimitive || x is IEquatable<object> || x.Equals(y))
        {
            return x.Equals(y) ? null : $"{place}: {x} and {y}";
        }

        if (x is IEnumerable xs)
        {
            var a = xs.Cast<object?>().ToList();
            var b = ((IEnumerable)y).Cast<object?>().ToList();
            return a.Count != b.Count
                ? $"{place}: {a.Count} and {b.Count} items"
                : a.Select((item, i) => Difference(item, b[i], $"{place}/{i}")).FirstOrDefault(d => d is not null);
        }

        var properties = x.GetType().GetProperties().Where(p => p.CanWrite && p.GetCustomAttribute<JsonIgnoreAttribute>() is not { Condition: JsonIgnoreCondition.Always }).ToList();
        return properties.Count == 0
            ? $"{place}: {x} and {y}"
            : properties.Select(p => Difference(p.GetValue(x), p.GetValue(y), $"{place}/{p.Name}")).FirstOrDefault(d => d is not null);
    }
}
