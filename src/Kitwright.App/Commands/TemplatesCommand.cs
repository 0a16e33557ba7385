using System.CommandLine;
using Kitwright.Print.Pages;
using Kitwright.Publishing;

namespace Kitwright.App.Commands;

/// <summary><c>templates QUILT --out FILE</c>: templates at their true size, and foundations, as a PDF.</summary>
internal static class TemplatesCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var path = new Option<string>("--out") { Description = Inputs.Say("command.out"), Required = true };
        var paper = new Option<PaperSize?>("--paper") { Description = Inputs.Say("command.paper") };
        var command = new Command("templates", Inputs.Say("command.templates")) { quilt, path, paper };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var read = Inputs.ReadQuilt(parsed.GetValue(quilt)!);
            var findings = read.Findings;
            if (read.Value is { } found)
            {
                var size = parsed.GetValue(paper) ?? Papers.UsualFor(found);
                findings = PublicQuilt.NoTemplates(found) is { } refused
                    ? [.. findings, refused]
                    : [.. findings, .. Outputs.Write(output, parsed.GetValue(path)!, stream => TemplateBook.Write(found, size, stream, Inputs.Language(parsed, found)))];
            }

            Report.Write(output, findings, Inputs.Language(parsed, read.Value));
            return Report.ExitFor(findings);
        });
        return command;
    }
}
