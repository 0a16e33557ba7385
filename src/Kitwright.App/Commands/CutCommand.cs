using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;

namespace Kitwright.App.Commands;

/// <summary>
/// <c>cut PIECES --width W</c> or <c>cut PIECES --cloth CLOTH</c>: any list of pieces from a roll in the least length, or
/// from pieces of cloth at the least cost; the engine's plain door.
/// </summary>
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
                    Report.Write(output, findings, Inputs.Language(parsed));
                    if (cut is not null)
                    {
                        CutText.Write(output, cut, Inputs.Language(parsed));
                    }
                }

                return Task.FromResult(cut is null ? ExitCode.Findings : Report.ExitFor(findings));
            }
        );
        return command;
    }

    private static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(string path, CutTerms terms, CancellationToken cancel)
    {
        var bytes = InputFile.Read(path);
        var cloth = terms.ClothPath is { } named ? InputFile.Read(named) : Checked<byte[]>.Of([]);
        return bytes.Value is null || cloth.Value is null
            ? (null, [.. bytes.Findings, .. cloth.Findings])
            : Cut(bytes.Value, cloth.Value, terms, cancel);
    }

    /// <param name="cloth">The list of pieces of cloth; not read for a roll.</param>
    public static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(byte[] pieces, byte[] cloth, CutTerms terms, CancellationToken cancel)
    {
        var list = PieceList.Read(pieces, terms.Measure, terms.MayTurn);
        var sheets = Sheets(cloth, terms);
        if (list.Value is null || sheets.Value is null)
        {
            return (null, [.. list.Findings, .. sheets.Findings]);
        }

        var (cut, findings) = terms.IsPlainRoll
            ? RollCutting.Cut(list.Value, terms, cancel)
            : SheetCutting.Cut(list.Value, sheets.Value.Sheets, terms, cancel);
        return (cut, [.. list.Findings, .. sheets.Findings, .. findings]);
    }

    /// <summary>The cloths of the list of cloths, its findings with the list's name; or the roll.</summary>
    private static Checked<ClothList> Sheets(byte[] cloth, CutTerms terms)
    {
        if (terms.ClothPath is null)
        {
            return Checked<ClothList>.Of(new(SheetCutting.Roll(terms.Width!.Value)));
        }

        var cloths = ClothList.Read(cloth, terms.Measure);
        return cloths with { Findings = [.. cloths.Findings.Select(f => f with { Place = $"--cloth {f.Place}" })] };
    }
}
