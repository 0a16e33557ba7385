using System.CommandLine;

namespace Kitwright.App.Commands;

/// <summary><c>sew QUILT</c>: the steps from cut pieces to quilt top, with counts, sizes, pressing and trims.</summary>
internal static class SewCommand
{
    public const string Format = "kitwright-sew";
    public const int Version = 1;

    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var json = Inputs.Json();
        var command = new Command("sew", Inputs.Say("command.sew")) { quilt, json };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var planned = options.Plan(parsed, parsed.GetValue(quilt)!, cancel);
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(
                        output,
                        new
                        {
                            format = Format,
                            version = Version,
                            sewing = planned.Plan is { } plan ? SewJson.Of(plan, planned.Language) : null,
                            findings = Report.Json(planned.Findings),
                        }
                    );
                }
                else
                {
                    Report.Write(output, planned.Findings, planned.Language);
                    if (planned.Plan is { } plan)
                    {
                        SewText.Write(output, plan, planned.Language);
                        TechniqueText.Write(output, options.Compare(parsed, parsed.GetValue(quilt)!), planned.Language);
                    }
                }

                return Task.FromResult(planned.Plan is null ? ExitCode.Findings : Report.ExitFor(planned.Findings));
            }
        );
        return command;
    }
}
