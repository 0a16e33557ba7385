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
                var (test, bad) = Read(
                    parsed.GetValue(across),
                    parsed.GetValue(middle),
                    planned.Language.Units.Sizes,
                    planned.Plan?.Seam ?? Length.Inches(0, 1, 4)
                );
                (Length Value, Finding? Finding)? allowed = parsed.GetValue(tolerance) is { } text
                    ? Tolerance.Read(text, planned.Language.Units.Sizes, planned.Plan?.Seam ?? Length.Inches(0, 1, 4))
                    : null;
                ImmutableArray<Finding> findings = [.. planned.Findings, .. bad, .. allowed?.Finding is { } refused ? [refused] : ImmutableArray<Finding>.Empty];
                var good = planned.Plan is not null && bad.IsEmpty && allowed?.Finding is null;
                var most = allowed?.Value;
                var hands = test?.Hands(Hands.Usual) ?? Hands.Usual;
                var accuracy = good ? QuiltAccuracy.Of(planned.Plan!, hands, Generous, parsed.GetValue(quilts)) : null;
                var words = accuracy is null ? [] : AccuracyWords.Of(planned.Plan!, accuracy, planned.Language.Units.Sizes, most);
                ImmutableArray<Message> tested = test is null || accuracy is null ? [] : AccuracyWords.Of(test).AddRange(TrimWords.Of(planned.Plan!, hands));
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(
                        output,
                        good
                            ? Answer(planned.Plan!, test, parsed.GetValue(quilts), findings, planned.Language, most)
                            : new { format = Format, version = Version, accuracy, sentences = Array.Empty<string>(), findings = Report.Json(findings) }
                    );
                }
                else
                {
                    Report.Write(output, findings, planned.Language);
                    foreach (var line in tested.AddRange(words))
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
        var accuracy = QuiltAccuracy.Of(plan, test?.Hands(Hands.Usual) ?? Hands.Usual, Generous, quilts);
        ImmutableArray<Message> said = [.. test is null ? [] : AccuracyWords.Of(test).AddRange(TrimWords.Of(plan, test.Hands(Hands.Usual))), .. AccuracyWords.Of(plan, accuracy, words.Units.Sizes, tolerance)];
        return new
        {
            format = Format,
            version = Version,
            accuracy,
            sentences = said.Select(words.Say),
            findings = Report.Json(findings),
        };
    }

    /// <summary>A seam test needs both measures, and neither half an inch off.</summary>
    public static (SeamTest? Test, ImmutableArray<Finding> Findings) Read(string? across, string? middle, LengthUnit units, Length seam)
    {
        if (across is null && middle is null)
        {
            return (null, []);
        }

        var read = SeamTest.Read(across, middle, units, seam);
        return (read.Value, read.Findings);
    }
}
