using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts.Partitions;
using Kitwright.Quilts.Reading;

namespace Kitwright.Quilts;

/// <summary>What must hold between the parts of a quilt, beyond each being well formed.</summary>
/// <remarks>Places are JSON pointers into the quilt's file.</remarks>
public static class QuiltRules
{
    /// <summary>Seams of patchwork lie well within these (common practice, no source).</summary>
    private static readonly Length LeastSeam = Length.Inches(0, 1, 8);
    private static readonly Length MostSeam = Length.Inches(0, 5, 8);

    /// <summary>No ruler is coarser that one would cut patches by (common practice, no source).</summary>
    private static readonly Length MostStep = Length.Inches(0, 1, 2);

    public static ImmutableArray<Finding> Check(Quilt quilt)
    {
        var report = new Report();
        Check(quilt, report);
        return report.ToImmutable();
    }

    internal static void Check(Quilt quilt, Report report)
    {
        CheckMeasures(quilt, report);
        CheckNames(quilt, report);
        CheckRoles(quilt, report);
        for (var i = 0; i < quilt.Blocks.Length && !report.IsFull; i++)
        {
            foreach (var finding in Partition.Check(quilt.Blocks[i], $"/blocks/{i}", quilt.Units))
            {
                report.Add(finding);
            }
        }

        if (!report.HasFault && SettingRules.Check(quilt, report))
        {
            BorderRules.CheckFit(quilt, report);
            if (!report.HasFault)
            {
                CheckSide(quilt, report);
            }
        }
    }

    /// <summary>Seams and rulers that nobody uses are as a rule a slip of the unit.</summary>
    private static void CheckMeasures(Quilt quilt, Report report)
    {
        if (quilt.Seam < LeastSeam || quilt.Seam > MostSeam)
        {
            report.Note("quilt.seam.unusual", "/seam", ("seam", quilt.Seam), ("least", LeastSeam), ("most", MostSeam));
        }

        if (quilt.RulerStep > MostStep)
        {
            report.Note("quilt.ruler-step.unusual", "/rulerStep", ("step", quilt.RulerStep), ("most", MostStep));
        }
    }

    private static void CheckNames(Quilt quilt, Report report)
    {
        Distinct(quilt.Roles.Select(r => r.Id), i => $"/roles/{i}/id", report);
        Distinct(quilt.Blocks.Select(b => b.Id), i => $"/blocks/{i}/id", report);
        Distinct(quilt.Colorways.Select(c => c.Name.ToUpperInvariant()), i => $"/colorways/{i}/name", report);
        for (var b = 0; b < quilt.Blocks.Length; b++)
        {
            var block = b;
            Distinct(quilt.Blocks[b].Patches.Select(p => p.Id), i => $"/blocks/{block}/patches/{i}/id", report);
        }
    }

    private static void Distinct(IEnumerable<string> names, Func<int, string> place, Report report)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var i = 0;
        foreach (var name in names)
        {
            if (!seen.Add(name))
            {
                report.Fault("quilt.twice", place(i), ("name", name));
            }

            i++;
        }
    }

    private static void CheckRoles(Quilt quilt, Report report)
    {
        var known = quilt.Roles.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (place, role) in RoleUses.Of(quilt))
        {
            used.Add(role);
            if (!known.Contains(role))
            {
                report.Fault("quilt.role.unknown", place, ("role", role));
            }
        }

        foreach (var role in (quilt.Licensed?.Lengths.Keys ?? []).Where(role => !known.Contains(role)))
        {
            report.Fault("quilt.role.unknown", $"/licensed/lengths/{role}", ("role", role));
        }

        for (var i = 0; i < quilt.Roles.Length; i++)
        {
            if (!used.Contains(quilt.Roles[i].Id))
            {
                report.Note("quilt.role.unused", $"/roles/{i}", ("role", quilt.Roles[i].Name));
            }
        }

        for (var i = 0; i < quilt.Colorways.Length; i++)
        {
            CheckColorway(quilt, quilt.Colorways[i], i, used, report);
        }
    }

    private static void CheckColorway(Quilt quilt, Colorway colorway, int index, HashSet<string> used, Report report)
    {
        foreach (var role in colorway.Fabrics.Keys.Where(key => quilt.Roles.All(r => r.Id != key)))
        {
            report.Fault("quilt.role.unknown", $"/colorways/{index}/fabrics/{role}", ("role", role));
        }

        foreach (var role in quilt.Roles.Where(r => used.Contains(r.Id) && !colorway.Fabrics.ContainsKey(r.Id)))
        {
            report.Note(
                "quilt.colorway.open",
                $"/colorways/{index}/fabrics",
                ("colorway", colorway.Name),
                ("role", role.Name)
            );
        }
    }

    private static void CheckSide(Quilt quilt, Report report)
    {
        var design = Layout.Of(quilt);
        var longer = Length.Max(design.Width, design.Height);
        if (longer > QuiltLimits.Side)
        {
            report.Fault("quilt.side", "/setting", ("side", longer), ("most", QuiltLimits.Side));
        }
    }
}
