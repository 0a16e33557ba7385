using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json.Serialization;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Tests.Plans;

/// <summary>
/// Any record filled at random, by its constructor and its init-only properties: so that a record or field that is
/// added later is covered too.
/// </summary>
internal sealed class Specimen(int seed)
{
    private static readonly NullabilityInfoContext Nullability = new();
    private readonly Random random = new(seed);

    public object Make(Type type)
    {
        if (type.IsAbstract)
        {
            var kinds = type.GetCustomAttributes<JsonDerivedTypeAttribute>().Select(a => a.DerivedType).ToList();
            return Make(kinds[random.Next(kinds.Count)]);
        }

        return type switch
        {
            _ when type == typeof(string) => Words(),
            _ when type == typeof(int) => random.Next(1, 500),
            _ when type == typeof(long) => random.NextInt64(),
            _ when type == typeof(double) => (double)random.Next(),
            _ when type == typeof(bool) => random.Next(2) == 0,
            _ when type == typeof(Rational) => Part(),
            _ when type == typeof(Length) => Length.Inches(Part()),
            _ when type == typeof(Surd) => Coordinate(),
            _ when type == typeof(Point) => new Point(Coordinate(), Coordinate()),
            _ when type == typeof(Line) => new Line(new(Coordinate(), Coordinate()), new(Coordinate(), Coordinate())),
            _ when type == typeof(Motion) => Motion.EighthTurns(random.Next(8)).Then(Motion.Shift(Coordinate(), Coordinate())),
            _ when type == typeof(Polygon) => new Polygon([.. Enumerable.Range(0, random.Next(3, 6)).Select(_ => new Point(Coordinate(), Coordinate()))]),
            _ when type == typeof(PathId) => default(PathId).Child("piece", Words()),
            _ when type == typeof(Message) => Said(depth: 2),
            _ when type.IsEnum => Enum.GetValues(type).GetValue(random.Next(Enum.GetValues(type).Length))!,
            _ when IsArray(type) => Array(type.GetGenericArguments()[0]),
            _ => Record(type),
        };
    }

    private object Record(Type type)
    {
        var constructor = type.GetConstructors().OrderByDescending(c => c.GetParameters().Length).First();
        var made = constructor.Invoke([.. constructor.GetParameters().Select(p => Maybe(p.ParameterType, Nullability.Create(p).ReadState))]);
        foreach (var property in Extra(type))
        {
            property.SetValue(made, Maybe(property.PropertyType, Nullability.Create(property).ReadState));
        }

        return made;
    }

    /// <summary>Properties that a <c>with</c> expression sets and the constructor does not.</summary>
    private static IEnumerable<PropertyInfo> Extra(Type type)
    {
        var parameters = type.GetConstructors().SelectMany(c => c.GetParameters()).Select(p => p.Name).ToHashSet();
        return type.GetProperties().Where(p => p.CanWrite && !parameters.Contains(p.Name));
    }

    private object? Maybe(Type type, NullabilityState state)
    {
        var inner = Nullable.GetUnderlyingType(type);
        var nullable = inner is not null || (!type.IsValueType && state == NullabilityState.Nullable);
        return nullable && random.Next(3) == 0 ? null : Make(inner ?? type);
    }

    private object Array(Type item)
    {
        var items = System.Array.CreateInstance(item, random.Next(4));
        for (var i = 0; i < items.Length; i++)
        {
            items.SetValue(Make(item), i);
        }

        return typeof(ImmutableArray)
            .GetMethods()
            .Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }])
            .MakeGenericMethod(item)
            .Invoke(null, [items])!;
    }

    public static bool IsArray(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

    private Message Said(int depth) =>
        Message.Of(
            "key." + random.Next(9),
            ("a", Words()),
            ("b", -random.Next()),
            ("c", random.NextInt64()),
            ("length", depth > 0 && random.Next(2) == 0 ? "3 7/8" : Length.Inches(Part())),
            ("e", depth == 0 ? "" : Said(depth - 1)),
            ("f", depth == 0 ? [] : ImmutableArray.Create(Said(depth - 1), Said(0)))
        );

    private string Words() => string.Concat(Enumerable.Range(0, random.Next(6)).Select(_ => "aZ9 \"\\/é½√\n\t<&"[random.Next(14)]));

    private Rational Part() => random.Next(8) == 0 ? new(random.NextInt64(), random.NextInt64(1, long.MaxValue)) : new(random.Next(-900, 900), random.Next(1, 65));

    private Surd Coordinate() => new(Part(), random.Next(2) == 0 ? default : Part(), random.Next(3) == 0 ? Part() : default, random.Next(4) == 0 ? Part() : default);
}
