using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.Accuracy;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Trimming;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>accuracy QUILT</c>: how large blocks and top are likely to come out, and what would help.</summary>
internal static class AccuracyCommand
{
    public const string Format = "kitwright-accuracy";
    public const int Version = 1;
    public const int LeastQuilts = 100;
    public const int MostQuilts = 1_000_000;

    private const double Generous = 1.0 / 8;

    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var across = new Option<string?>("--across") { Description = Inputs.Say("command.accuracy.across") };
        var middle = new Option<string?>("--middle") { Description = Inputs.Say("command.accuracy.middle") };
        var tolerance = new Option<string?>("--tolerance") { Description = Inputs.Say("command.accuracy.tolerance") };
        var quilts = new Option<int>("--quilts") { Description = Inputs.Say("command.accuracy.quilts"), DefaultValueFactory = _ => 10_000 };
        var json = Inputs.Json();
        quilts.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is < LeastQuilts or > MostQuilts)
            {
                r.AddError(Inputs.Say("command.accuracy.quilts.bad"));
            }
        });
        var command = new Command("accuracy", Inputs.Say("command.accuracy")) { quilt, across, middle, tolerance, quilts, json };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var planned = options.Plan(parsed, parsed.GetValue(quilt)!, cancel);
                var (test, most, bad) = Read(
                    parsed.GetValue(across),
                    parsed.GetValue(middle),
                    parsed.GetValue(tolerance),
                    planned.Language.Units.Sizes,
                    planned.Plan?.Seam ?? Length.Inches(0, 1, 4)
                );
                ImmutableArray<Finding> findings = [.. planned.Findings, .. bad];
                var good = planned.Plan is not null && bad.IsEmpty;
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(
                        output,
                        good
                            ? Answer(planned.Plan!, test, parsed.GetValue(quilts), findings, planned.Language, most)
                            : new { format = Format, version = Version, accuracy = (QuiltAccuracy?)null, sentences = Array.Empty<string>(), findings = Report.Json(findings) }
                    );
                }
                else
                {
                    Report.Write(output, findings, planned.Language);
                    foreach (var line in good ? WorkOut(planned.Plan!, test, parsed.GetValue(quilts), planned.Language, most).Said : [])
                    {
                        output.WriteLine(planned.Language.Say(line));
                    }
                }

                return Task.FromResult(good ? Report.ExitFor(findings) : ExitCode.Findings);
            }
        );
        return command;
    }

    /// <summary>What the command prints of a plan as JSON.</summary>
    public static object Answer(QuiltPlan plan, SeamTest? test, int quilts, ImmutableArray<Finding> findings, Catalog words, Length? tolerance = null)
    {
        var (accuracy, said) = WorkOut(plan, test, quilts, words, tolerance);
        return new
        {
            format = Format,
            version = Version,
            accuracy,
            sentences = said.Select(words.Say),
            findings = Report.Json(findings),
        };
    }

    private static (QuiltAccuracy Accuracy, ImmutableArray<Message> Said) WorkOut(QuiltPlan plan, SeamTest? test, int quilts, Catalog words, Length? tolerance)
    {
        var hands = test?.Hands(Hands.Usual) ?? Hands.Usual;
        var accuracy = QuiltAccuracy.Of(plan, hands, Generous, quilts);
        return (accuracy, [.. test is null ? [] : AccuracyWords.Of(test).AddRange(TrimWords.Of(plan, hands)), .. AccuracyWords.Of(plan, accuracy, words.Units.Sizes, tolerance)]);
    }

    /// <summary>A seam test needs both measures, and neither half an inch off; a tolerance lies between nothing and a seam.</summary>
    /// <returns>Null for what was not given.</returns>
    public static (SeamTest? Test, Length? Tolerance, ImmutableArray<Finding> Findings) Read(string? across, string? middle, string? tolerance, LengthUnit units, Length seam)
    {
        var test = across is null && middle is null ? new(null, []) : SeamTest.Read(across, middle, units, seam);
        var (most, refused) = tolerance is null ? (null, null) : Tolerance.Read(tolerance, units, seam);
        return (test.Value, most, refused is null ? test.Findings : test.Findings.Add(refused));
    }
}
