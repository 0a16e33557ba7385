using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>stash QUILT --cloth CLOTH</c>: whether a quilt comes out of cloth that is there, and how it is cut from it.</summary>
internal static class StashCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var cloth = new Option<string>("--cloth") { Description = Inputs.Say("command.stash.cloth"), Required = true };
        var one = new Option<bool>("--one-cloth-each") { Description = Inputs.Say("command.stash.one") };
        var trim = new Option<string?>("--trim") { Description = Inputs.Say("command.stash.trim") };
        trim.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && !(LengthText.TryParse(text, out var read) && read.Sign >= 0))
            {
                result.AddError(Catalog.English.Say("command.cut.measure.bad", ("option", "--trim")));
            }
        });
        var json = Inputs.Json();
        var command = new Command("stash", Inputs.Say("command.stash")) { quilt, cloth, one, trim, json };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var planned = options.Plan(parsed, parsed.GetValue(quilt)!, cancel);
                var cloths = ReadCloths(parsed.GetValue(cloth)!, (planned.Plan?.Cloths.FirstOrDefault()?.Terms ?? ClothTerms.Usual).UsableWidth, planned.Language.Units.Sizes);
                ImmutableArray<Finding> findings = [.. planned.Findings, .. cloths.Findings];
                CutOutcome? cut = null;
                if (planned.Plan is { } plan && cloths.Value is { } list)
                {
                    LengthText.TryParse(parsed.GetValue(trim), out var off);
                    var budget = Cutters.Limit(plan.Budget);
                    (cut, var found) = SheetCutting.Timed(
                        () => StashRoom.Plan(plan, list.Sheets, off, parsed.GetValue(one), budget, cancel),
                        answer => (answer.Plan, answer.Findings)
                    );
                    findings = [.. findings, .. found];
                }

                if (parsed.GetValue(json))
                {
                    Report.WriteJson(output, CutAnswer.Of(cut, Report.Json(findings)));
                }
                else
                {
                    Report.Write(output, findings, planned.Language);
                    if (cut is not null)
                    {
                        CutText.Write(output, cut, planned.Language);
                        output.WriteLine(planned.Language.Say(Report.ExitFor(findings) == ExitCode.Good ? "command.stash.enough" : "command.stash.short"));
                    }
                }

                return Task.FromResult(cut is null ? ExitCode.Findings : Report.ExitFor(findings));
            }
        );
        return command;
    }

    /// <summary>A list with columns, or lines as a quilter writes them down.</summary>
    private static Checked<ClothList> ReadCloths(string path, Length usualWidth, LengthUnit unit)
    {
        var bytes = InputFile.Read(path);
        if (bytes.Value is null)
        {
            return new(null, bytes.Findings);
        }

        var cloths = ClothList.ReadAny(bytes.Value, usualWidth, unit);
        return cloths with { Findings = [.. cloths.Findings.Select(f => f with { Place = $"--cloth {f.Place}" })] };
    }
}
