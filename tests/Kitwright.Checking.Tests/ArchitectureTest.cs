using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// The checker is worth something only as long as it shares no code with what it checks. Which types of the core it may
/// use is a house rule; here, that of points, lines, motions, polygons and plan records it uses the data only.
/// </summary>
public sealed class ArchitectureTest
{
    /// <summary>Of these types the data only, and what applies a motion to a point; no geometry and no arithmetic.</summary>
    private static readonly Dictionary<string, string[]> AllowedMembers = new()
    {
        ["Kitwright.Geometry.Polygon"] = ["get_Corners"],
        ["Kitwright.Geometry.Line"] = [".ctor", "get_From", "get_To"],
        ["Kitwright.Geometry.Motion"] = [".ctor", "Apply", "get_XX", "get_XY", "get_YX", "get_YY", "get_DX", "get_DY", "op_Equality"],
        ["Kitwright.Geometry.Point"] = [".ctor", "get_X", "get_Y", "op_Addition", "op_Subtraction", "op_Multiply", "op_Equality", "op_Inequality"],
    };

    /// <summary>What plan records work out for others; the checker works it out itself.</summary>
    private static readonly string[] ForbiddenMembers =
    [
        "get_Copies",
        "get_ToCut",
        "get_StripLength",
        "get_Wanted",
        "get_PurchaseIsLeast",
        "Purchase",
    ];

    [Fact]
    public void The_checker_has_its_own_geometry_and_arithmetic()
    {
        var members = MemberReferences().ToArray();
        Assert.NotEmpty(members);
        Assert.Equal(
            [],
            members.Where(m =>
                (AllowedMembers.TryGetValue(m.Type, out var allowed) && !allowed.Contains(m.Name))
                || (m.Type.StartsWith("Kitwright.Plans.", StringComparison.Ordinal) && ForbiddenMembers.Contains(m.Name))
            )
        );
    }

    [Fact]
    public void The_checker_references_the_core_and_the_platform_only()
    {
        Assert.Equal(
            ["Kitwright.Core"],
            typeof(PlanChecker)
                .Assembly.GetReferencedAssemblies()
                .Select(a => a.Name!)
                .Where(n => !n.StartsWith("System.", StringComparison.Ordinal))
        );
    }

    private static IEnumerable<(string Type, string Name)> MemberReferences()
    {
        using var file = new PEReader(File.OpenRead(typeof(PlanChecker).Assembly.Location));
        var metadata = file.GetMetadataReader();
        var members = new List<(string, string)>();
        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind == HandleKind.TypeReference)
            {
                members.Add((Name(metadata, (TypeReferenceHandle)member.Parent), metadata.GetString(member.Name)));
            }
        }

        return members;
    }

    private static string Name(MetadataReader metadata, TypeReferenceHandle handle)
    {
        var type = metadata.GetTypeReference(handle);
        return $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";
    }
}
