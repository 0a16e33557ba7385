using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.Kits.Forms;
using Kitwright.Print.Pages;

namespace Kitwright.App.Commands;

/// <summary><c>bag QUILT --form FORM --out FILE</c>: the sheets of one kit, for the shop's table and for the bag.</summary>
internal static class BagCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var form = new Option<KitForm?>("--form") { Description = Inputs.Say("command.form"), CustomParser = BagText.FormOf, Required = true };
        var path = new Option<string>("--out") { Description = Inputs.Say("command.out"), Required = true };
        var paper = new Option<PaperSize?>("--paper") { Description = Inputs.Say("command.paper") };
        var command = new Command("bag", Inputs.Say("command.bag")) { quilt, form, path, paper };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (planned, found, shelf) = options.PlanOf(parsed, parsed.GetValue(quilt)!, cancel);
                var findings = planned.Findings;
                if (planned.Plan is { } plan)
                {
                    var printed = BagPrint.Of(found!, plan, parsed.GetValue(form)!.Value, shelf!, parsed.GetValue(paper) ?? Papers.UsualFor(found!), planned.Language);
                    findings =
                    [
                        .. findings,
                        .. printed.Findings,
                        .. printed.Value is { } pdf ? Outputs.Write(output, parsed.GetValue(path)!, stream => stream.Write(pdf)) : [],
                    ];
                }

                Report.Write(output, findings, planned.Language);
                return Task.FromResult(planned.Plan is null ? ExitCode.Findings : Report.ExitFor(findings));
            }
        );
        return command;
    }
}
