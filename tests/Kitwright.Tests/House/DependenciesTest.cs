using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Kitwright.Tests.House;

/// <summary>Dependencies point down only, and the checker stands apart.</summary>
public sealed class DependenciesTest
{
    /// <summary>What each project may refer to. A project that is not listed has no place in the architecture yet.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Kitwright"] = [],
        ["Kitwright.Checking"] = ["Kitwright"],
        ["Kitwright.Optimise"] = ["Kitwright"],
        ["Kitwright.Print"] = ["Kitwright"],
        ["Kitwright.Exchange"] = ["Kitwright"],
        ["Kitwright.Shop"] = ["Kitwright"],
        ["Kitwright.App"] =
        [
            "Kitwright", "Kitwright.Checking", "Kitwright.Optimise", "Kitwright.Print", "Kitwright.Exchange", "Kitwright.Shop",
        ],
    };

    private static IEnumerable<(string Name, XDocument Project)> Projects =>
        SourceFiles
            .All.Where(f => f.Under("src") && f.Extension == ".csproj")
            .Select(f => (Path.GetFileNameWithoutExtension(f.Path), XDocument.Parse(f.Text)));

    private static IEnumerable<string> Includes(XDocument project, string element) =>
        project.Descendants(element).Select(e => (string?)e.Attribute("Include") ?? "");

    [Fact]
    public void Projects_refer_downward_only() =>
        Rule.Holds(
            from project in Projects
            from reference in Includes(project.Project, "ProjectReference").Select(p => Path.GetFileNameWithoutExtension(p.Replace('\\', '/')))
            where !Allowed.GetValueOrDefault(project.Name, []).Contains(reference)
            select $"{project.Name} must not refer to {reference}"
        );

    [Fact]
    public void Every_project_has_its_place() =>
        Rule.Holds(from project in Projects where !Allowed.ContainsKey(project.Name) select $"where does {project.Name} stand?");

    [Fact]
    public void The_core_and_the_checker_refer_to_no_package() =>
        Rule.Holds(
            from project in Projects
            where project.Name is "Kitwright" or "Kitwright.Checking"
            from package in Includes(project.Project, "PackageReference").Concat(Includes(project.Project, "FrameworkReference"))
            select $"{project.Name} must not refer to {package}"
        );

    [Fact]
    public void The_core_as_built_refers_to_the_platform_only() =>
        Rule.Holds(
            from name in typeof(Kitwright.Measure.Rational).Assembly.GetReferencedAssemblies()
            where !name.Name!.StartsWith("System.", StringComparison.Ordinal)
            select $"the core refers to {name.Name}"
        );

    /// <summary>The records of shelf, request and kit plan; none of the code that makes one from another.</summary>
    private static readonly HashSet<(string, string)> KitRecords =
    [
        .. new[] { "Shelf", "Fabric", "Bolt" }.Select(name => ("Kitwright.Fabrics", name)),
        .. new[] { "KitRequest", "KitLine", "KitTerms", "KitPlan", "LineOutcome", "FabricCarry", "FabricOutcome", "BoltLoad", "LoadCut", "ShortCut", "OrderLine" }
            .Select(name => ("Kitwright.Kits", name)),
        .. new[] { "AllocationFigures", "AllocationGoal", "GoalBound" }.Select(name => ("Kitwright.Kits", name)),
    ];

    /// <summary>The records of sheets and of what is cut from them; none of the code that makes one from another.</summary>
    private static readonly HashSet<(string, string)> SheetRecords =
    [
        .. new[] { "SheetProblem", "SheetGoal", "StockSheet", "SheetDemand", "SheetTerms", "FirstCut", "LastCut" }
            .Concat(["SheetPlan", "SheetCut", "SheetStrip", "ShortPiece", "SheetFigures", "SheetProof"])
            .Select(name => ("Kitwright.Cutting.Sheets", name)),
    ];

    /// <summary>The exact numbers and points, the plan records, and findings with their messages; no recipe, no solver.</summary>
    [Fact]
    public void The_checker_as_built_uses_numbers_and_plan_records_only()
    {
        string[] allowed = ["Kitwright.Measure", "Kitwright.Geometry", "Kitwright.Plans", "Kitwright.Findings", "Kitwright.Words"];
        var used = UsedFromCore("Kitwright.Checking.dll").ToList();
        Assert.NotEmpty(used);
        Rule.Holds(from type in used where !allowed.Contains(type.Namespace) && !KitRecords.Contains(type) && !SheetRecords.Contains(type) select $"the checker uses {type.Namespace}.{type.Name}");
    }

    /// <summary>A technique is a program of the checker's verbs: none of their names may occur in it.</summary>
    [Fact]
    public void The_checker_knows_no_technique()
    {
        var technique = new Regex("half.?square|quarter.?square|goose|geese|stitch.?and.?flip|snowball|log.?cabin|paper.?pieced|foundation", RegexOptions.IgnoreCase);
        Rule.Holds(
            from file in SourceFiles.CSharp
            where file.Under("src/Kitwright.Checking")
            from Match match in technique.Matches(file.Text)
            select $"{file.Path}: {match.Value}"
        );
    }

    /// <summary>Folders of the core that use one another in a circle would be one folder.</summary>
    [Fact]
    public void Folders_of_the_core_form_no_circle()
    {
        var uses = SourceFiles
            .CSharp.Where(f => f.Under("src/Kitwright"))
            .SelectMany(f => Regex.Matches(f.Text, @"^using Kitwright\.(\w+)", RegexOptions.Multiline).Select(m => (From: f.Path.Split('/')[2], To: m.Groups[1].Value)))
            .Where(u => u.From != u.To)
            .ToLookup(u => u.From, u => u.To);
        Assert.NotEmpty(uses);

        string? Circle(string folder, string path) =>
            path.Split(' ').Contains(folder)
                ? $"{path} {folder}"
                : uses[folder].Distinct().Select(next => Circle(next, $"{path} {folder}")).FirstOrDefault(c => c is not null);

        Rule.Holds(from folder in uses.Select(g => g.Key) let circle = Circle(folder, "") where circle is not null select circle);
        Assert.Empty(uses["Measure"]);
    }

    private static IEnumerable<(string Namespace, string Name)> UsedFromCore(string assembly)
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, assembly));
        using var file = new PEReader(stream);
        var metadata = file.GetMetadataReader();
        foreach (var type in metadata.TypeReferences.Select(metadata.GetTypeReference))
        {
            if (
                type.ResolutionScope.Kind == HandleKind.AssemblyReference
                && metadata.GetString(metadata.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope).Name) == "Kitwright.Core"
            )
            {
                yield return (metadata.GetString(type.Namespace), metadata.GetString(type.Name));
            }
        }
    }
}
