using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Commands;

/// <summary><c>plan QUILT</c>: cut list, cutting plan and needs, checked.</summary>
internal static class PlanCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var json = Inputs.Json();
        var command = new Command("plan", Inputs.Say("command.plan")) { quilt, json };
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
                            format = QuiltPlan.Format,
                            version = QuiltPlan.Version,
                            plan = planned.Plan,
                            trace = planned.Plan is null ? null : planned.Trace,
                            findings = Report.Json(planned.Findings),
                        }
                    );
                }
                else
                {
                    Report.Write(output, planned.Findings);
                    if (planned.Plan is { } plan)
                    {
