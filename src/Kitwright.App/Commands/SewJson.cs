using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Sewing;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.App.Commands;

/// <summary>The sewing of a quilt as <c>sew --json</c> prints it; the schema is docs/schema/sew.v1.</summary>
internal sealed record SewJson(
    string Quilt,
    string? Colorway,
    string Mark,
    Length Seam,
    long Seams,
    int Chains,
    long Trims,
    long Crossings,
    long Nested,
    SewTimesJson Minutes,
    ImmutableArray<SewStepJson> Steps
)
{
    public static SewJson Of(QuiltPlan plan, Catalog words)
    {
        var sheet = SewingSheet.Of(plan);
