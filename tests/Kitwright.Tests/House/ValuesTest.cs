using System.Reflection;
using System.Text.RegularExpressions;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.House;

/// <summary>What every value type of the foundations promises.</summary>
public sealed class ValuesTest
{
    private static readonly string[] Foundations = ["Kitwright.Measure", "Kitwright.Geometry", "Kitwright.Words", "Kitwright.Findings", "Kitwright.Plans"];

    private static IEnumerable<Type> Exported => typeof(Rational).Assembly.GetExportedTypes();

    private static IEnumerable<Type> Structs => Exported.Where(t => t.IsValueType && !t.IsEnum && Foundations.Contains(t.Namespace));

    /// <summary>A measure is never the outcome of floating point; to a double is the one way out.</summary>
    [Fact]
    public void No_floating_point_stands_in_the_face_of_measure() =>
        Rule.Holds(
            from type in Exported
            where type.Namespace == "Kitwright.Measure"
            from member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where member.Name != "ToDouble" && TypesOf(member).Any(IsFloating)
            select $"{type.Name}.{member.Name}"
        );

    [Fact]
    public void The_default_of_every_value_type_is_safe_to_look_at() =>
        Assert.All(
            Structs,
            type =>
            {
                var value = Activator.CreateInstance(type)!;
                Assert.Equal(value, Activator.CreateInstance(type));
                Assert.Equal(value.GetHashCode(), Activator.CreateInstance(type)!.GetHashCode());
                Assert.NotNull(value.ToString());
                Assert.All(
                    type.GetProperties().Where(p => p.GetMethod!.GetParameters().Length == 0),
                    property => property.GetValue(property.GetMethod!.IsStatic ? null : value)
                );
            }
        );

    [Fact]
    public void The_default_of_every_value_type_is_documented()
    {
        Assert.NotEmpty(Structs);
        Rule.Holds(
            from type in Structs
            from file in SourceFiles.CSharp
            where file.Under("src/Kitwright")
            let declaration = Regex.Match(file.Text, $@"((?:^///.*\n)+)public readonly (record )?struct {type.Name}\b", RegexOptions.Multiline)
            where declaration.Success && !declaration.Groups[1].Value.Contains("<c>default</c>", StringComparison.Ordinal)
            select $"{file.Path}: what is the default of {type.Name}?"
        );
    }

    [Fact]
    public void Plan_records_can_not_be_changed() =>
        Rule.Holds(
            from type in Exported
            where Foundations.Contains(type.Namespace)
            from property in type.GetProperties()
            where property.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit))
            select $"{type.Name}.{property.Name}"
        );

    private static bool IsFloating(Type type) => type == typeof(double) || type == typeof(float) || type == typeof(Half) || type == typeof(decimal);

    private static IEnumerable<Type> TypesOf(MemberInfo member) =>
        member switch
        {
            MethodInfo method => method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType),
            ConstructorInfo constructor => constructor.GetParameters().Select(p => p.ParameterType),
            PropertyInfo property => [property.PropertyType],
            FieldInfo field => [field.FieldType],
            _ => [],
        };
}
