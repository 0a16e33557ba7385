using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Sewing;
using Kitwright.Words;

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
    ImmutableArray<SewStepJson> Steps
)
{
    public static SewJson Of(QuiltPlan plan)
    {
        var sheet = SewingSheet.Of(plan);
        var words = Directions.Of(plan);
        var meetings = PressingReport.Of(plan, SeamTrace.Of(plan));
        return new(
            plan.Quilt,
            plan.Colorway,
            plan.Mark,
            plan.Seam,
            sheet.Seams,
            sheet.Chains,
            sheet.Trims,
            meetings.Crossings,
            meetings.Nested,
            [.. sheet.Steps.Zip(words, SewStepJson.Of)]
        );
    }
}

/// <summary>One step: what goes in, what comes out, how often, and the directions in words.</summary>
internal sealed record SewStepJson(
    PathId Id,
    int Number,
    PathId Recipe,
    string Title,
    int Runs,
    int Copies,
    ImmutableArray<StepInput> Uses,
    Length Width,
    Length Height,
    int SeamsEach,
    int PressesEach,
    int CutsEach,
    int TrimsEach,
    ImmutableArray<string> Directions
)
{
    public static SewStepJson Of(StepCount count, SewingStep step) =>
        new(
            step.Id,
            count.Number,
            count.Recipe,
            SentenceStart.Of(Catalog.English.Say(step.Title)),
            count.Runs,
            count.Copies,
            count.Uses,
            count.Width,
            count.Height,
            count.SeamsEach,
            count.PressesEach,
            count.CutsEach,
            count.TrimsEach,
            [.. step.Lines.Select(Catalog.English.Say)]
        );
}
