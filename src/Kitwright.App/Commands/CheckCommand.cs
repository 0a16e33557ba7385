using System.CommandLine;
using Kitwright.Checking;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>check PLAN</c>: sews the quilt from the plan's own cuts and lists what does not come out.</summary>
internal static class CheckCommand
{
    public static Command Make()
    {
        var path = new Argument<string>("PLAN") { Description = Inputs.Say("command.check.plan") };
        var json = Inputs.Json();
        var command = new Command("check", Inputs.Say("command.check")) { path, json };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var words = Inputs.Language(parsed);
            var bytes = InputFile.Read(parsed.GetValue(path)!);
            var plan = bytes.Value is null
                ? Checked<QuiltPlan>.Failed(bytes.Findings)
                : PlanFile.Read(Inputs.Text(bytes.Value));
            var findings = plan.Value is null ? plan.Findings : plan.Findings.AddRange(PlanChecker.Check(plan.Value).Findings);
            if (parsed.GetValue(json))
            {
                Report.WriteJson(output, new { good = Report.ExitFor(findings) == ExitCode.Good, findings = Report.Json(findings) });
            }
            else
            {
                Report.Write(output, findings, words);
                if (Report.ExitFor(findings) == ExitCode.Good)
                {
                    output.WriteLine(
                        words.Say("command.check.good", ("pieces", plan.Value!.Pieces.Sum(p => p.Count)))
                    );
                }
            }

            return Report.ExitFor(findings);
        });
        return command;
    }
}
