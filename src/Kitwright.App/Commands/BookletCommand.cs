using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Piecing;
using Kitwright.Print.Pages;
using Kitwright.Publishing;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.App.Commands;

/// <summary><c>booklet QUILT --colorway NAME --out FILE</c>: the printed pattern, from a checked plan only.</summary>
internal static class BookletCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var colorway = Inputs.Colorway();
        var stock = Inputs.Stock();
        var path = new Option<string>("--out") { Description = Inputs.Say("command.out"), Required = true };
        var paper = new Option<PaperSize?>("--paper") { Description = Inputs.Say("command.paper") };
        var command = new Command("booklet", Inputs.Say("command.booklet")) { quilt, colorway, stock, path, paper };
        var who = new SewistOptions();
        who.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (sewist, bad) = who.Read(parsed);
                var (findings, language) = bad.IsEmpty
                    ? Print(
                        parsed.GetValue(quilt)!,
                        parsed.GetValue(colorway),
                        parsed.GetValue(stock),
                        parsed.GetValue(paper),
                        parsed.GetValue(path)!,
                        Inputs.WordsOf(parsed),
                        sewist,
                        cancel
                    )
                    : ([.. bad], Catalog.English);
                Report.Write(output, [.. findings], language);
                if (Report.ExitFor(findings) == ExitCode.Good)
                {
                    output.WriteLine(language.Say("command.wrote", ("path", parsed.GetValue(path)!)));
                }

                return Task.FromResult(Report.ExitFor(findings));
            }
        );
        return command;
    }

    private static (List<Finding> Findings, Catalog Language) Print(
        string quiltPath,
        string? colorway,
        string? stockPath,
        PaperSize? paper,
        string path,
        TradeWords words,
        Sewist sewist,
        CancellationToken cancel
    )
    {
        var quilt = Inputs.ReadQuilt(quiltPath);
        var shelf = Inputs.ReadStock(stockPath);
        List<Finding> findings = [.. quilt.Findings, .. shelf.Findings];
        if (quilt.Value is null || shelf.Value is null)
        {
            return (findings, Catalog.For(words, Units.OfTemplates));
        }

        var language = Languages.Of(quilt.Value, words);
        if (PublicQuilt.NoBooklet(quilt.Value) is { } refused)
        {
            return ([.. findings, refused], language);
        }

        var (chosen, unknown) = Inputs.Find(quilt.Value, colorway);
        findings.AddRange(unknown);
        if (unknown.Length > 0)
        {
            return (findings, language);
        }

        var options = Standing.OptionsFor(quilt.Value);
        var planned = PlanningLine.Plan(
            quilt.Value,
            chosen,
            shelf.Value.Fabrics,
            options,
            Cutters.Named(options.Budget, cancel)
        );
        findings.AddRange(planned.Findings);
        if (planned.Plan is { } plan)
        {
            var fault = InputFile.Write(path, stream => Booklet.Write(quilt.Value, plan, shelf.Value, paper ?? Papers.UsualFor(quilt.Value), language, stream, sewist));
            if (fault is not null)
            {
                findings.Add(fault);
            }
        }

        return (findings, language);
    }
}
