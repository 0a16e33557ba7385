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
    SewOwnJson? OwnMinutes,
    ImmutableArray<SewStepJson> Steps
)
{
    public static SewJson Of(QuiltPlan plan, Catalog words, Sewist sewist)
    {
        var sheet = SewingSheet.Of(plan);
        var steps = Directions.Of(plan);
        var experienced = WorkSheet.Of(plan, StandardTimes.Of(Practice.Experienced), sewist.Allowances);
        var beginner = WorkSheet.Of(plan, StandardTimes.Of(Practice.Beginner), sewist.Allowances);
        var meetings = PressingReport.Of(plan, SeamTrace.Of(plan));
        var own = sewist.Times is { } times ? WorkSheet.Of(plan, times, sewist.Allowances) : null;
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
            new(Duration.Minutes(experienced.Cutting), Duration.Minutes(beginner.Cutting), Duration.Minutes(experienced.Sewing), Duration.Minutes(beginner.Sewing)),
            own is null ? null : new(Duration.Minutes(own.Cutting), Duration.Minutes(own.Sewing)),
            [
                .. sheet
                    .Steps.Zip(steps)
                    .Select((pair, i) => SewStepJson.Of(pair.First, pair.Second, words, experienced.Steps[i].Seconds, beginner.Steps[i].Seconds)),
            ]
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
    int Minutes,
    int BeginnerMinutes,
    ImmutableArray<string> Directions
)
{
    public static SewStepJson Of(StepCount count, SewingStep step, Catalog words, double experienced, double beginner) =>
        new(
            step.Id,
            count.Number,
            count.Recipe,
            SentenceStart.Of(words.Say(step.Title)),
            count.Runs,
            count.Copies,
            count.Uses,
            count.Width,
            count.Height,
            count.SeamsEach,
            count.PressesEach,
            count.CutsEach,
            count.TrimsEach,
            Duration.Minutes(experienced),
            Duration.Minutes(beginner),
            [.. step.Lines.Select(words.Say)]
        );
}

/// <summary>Whole minutes of standard time, rounded up as people say them.</summary>
internal sealed record SewTimesJson(int Cutting, int BeginnerCutting, int Sewing, int BeginnerSewing);

/// <summary>The same by a person's own times.</summary>
internal sealed record SewOwnJson(int Cutting, int Sewing);
