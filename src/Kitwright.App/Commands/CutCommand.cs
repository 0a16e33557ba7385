using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;

namespace Kitwright.App.Commands;

/// <summary><c>cut PIECES --width W</c>: any list of pieces from a cloth, in the least length; the engine's plain door.</summary>
internal static class CutCommand
{
    public static Command Make()
    {
        var pieces = new Argument<string>("PIECES") { Description = Inputs.Say("command.cut.pieces") };
        var options = new CutOptions();
        var json = Inputs.Json();
        var command = new Command("cut", Inputs.Say("command.cut")) { pieces, json };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (cut, findings) = Cut(parsed.GetValue(pieces)!, options.Read(parsed), cancel);
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(output, CutAnswer.Of(cut, Report.Json(findings)));
                }
                else
                {
                    Report.Write(output, findings);
                    if (cut is not null)
                    {
                        CutText.Write(output, cut);
                    }
                }

                return Task.FromResult(cut is null ? ExitCode.Findings : Report.ExitFor(findings));
            }
        );
        return command;
    }

    private static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(string path, RollTerms terms, CancellationToken cancel)
    {
        var bytes = InputFile.Read(path);
        if (bytes.Value is null)
        {
            return (null, bytes.Findings);
        }

        var list = PieceList.Read(bytes.Value, terms.Measure, terms.MayTurn);
        if (list.Value is null)
        {
            return (null, list.Findings);
        }

        var (cut, findings) = RollCutting.Cut(list.Value, terms, cancel);
        return (cut, [.. list.Findings, .. findings]);
    }
}
