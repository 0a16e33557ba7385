using Kitwright.Findings;
using Kitwright.Quilts;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Every file of data/faulty/quilts gives the rule at the place that the table beside it states.</summary>
public sealed class FaultyQuiltTest
{
    private static readonly string[] Notes =
    [
        "quilt.field.unknown", "quilt.role.unused", "quilt.colorway.open", "quilt.border.coping", "quilt.seam.unusual", "quilt.ruler-step.unusual",
    ];

    public static TheoryData<string, string, string> Table() => FaultyFiles.Table("quilts");

    [Theory]
    [MemberData(nameof(Table))]
    public void Gives_the_stated_finding(string file, string rule, string place)
    {
        var read = QuiltFile.Read(Repository.Read("data", "faulty", "quilts", file));
        Assert.Contains(read.Findings, f => f.Rule == rule && f.Place == place);
        Assert.Equal(Notes.Contains(rule), read.Good);
        Assert.All(read.Findings, f => Assert.NotEqual(Catalog.English.Say(f.Reason), Catalog.English.Say(f.Remedy)));
    }

    [Fact]
    public void Table_lists_every_file() => FaultyFiles.AssertTableListsEveryFile("quilts", "*.json");

    [Fact]
    public void Each_file_holds_one_mistake_only()
    {
        // A fault may show at more than one place of a drawing, but not as more than one kind.
        foreach (var row in Table())
        {
            var (file, rule, _) = row.Data;
            var findings = QuiltFile.Read(Repository.Read("data", "faulty", "quilts", file)).Findings;
            Assert.All(findings, f => Assert.True(f.Rule == rule, $"{file}: {f.Rule} at {f.Place}"));
        }
    }

    [Fact]
    public void Every_rule_is_shown_by_a_file_or_by_the_tests_of_limits()
    {
        string[] limits = ["quilt.text.large", "quilt.text.long", "quilt.findings.more", "quilt.corners", "quilt.area"];
        var rules = Catalog.English.Keys.Where(k => k.StartsWith("quilt.", StringComparison.Ordinal) && Catalog.English.Has(k + ".remedy"));
        Assert.Equal(rules.Order(), Table().Select(r => r.Data.Item2).Concat(limits).Distinct().Order());
    }
}
