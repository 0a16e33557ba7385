using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.Cutting.Sheets;
using Kitwright.Fabrics;
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
        var cloth = new Option<string?>("--cloth") { Description = Inputs.Say("command.stash.cloth") };
        var shelf = new Option<string?>("--shelf") { Description = Inputs.Say("command.stash.shelf") };
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
        var command = new Command("stash", Inputs.Say("command.stash")) { quilt, cloth, shelf, one, trim, json };
        options.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(cloth) is null && result.GetValue(shelf) is null)
            {
                result.AddError(Inputs.Say("command.stash.neither"));
            }
        });
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (planned, read, stock) = options.PlanOf(parsed, parsed.GetValue(quilt)!, cancel);
                var cloths = ReadCloths(parsed.GetValue(cloth), (planned.Plan?.Cloths.FirstOrDefault()?.Terms ?? ClothTerms.Usual).UsableWidth, planned.Language.Units.Sizes);
                var leftovers = ReadLeftovers(parsed.GetValue(shelf));
                ImmutableArray<Finding> findings = [.. planned.Findings, .. cloths.Findings, .. leftovers.Findings];
                CutOutcome? cut = null;
                ShelfAnswer? rest = null;
                if (planned.Plan is { } plan && cloths.Value is { } list && leftovers.Value is { } pieces)
                {
                    LengthText.TryParse(parsed.GetValue(trim), out var off);
                    var budget = Cutters.Limit(plan.Budget);
                    (cut, var found) = parsed.GetValue(shelf) is null
                        ? SheetCutting.Timed(() => StashRoom.Plan(plan, list.Sheets, off, parsed.GetValue(one), budget, cancel), answer => (answer.Plan, answer.Findings))
                        : SheetCutting.Timed(
                            () => rest = ShelfRoom.Plan(plan, stock! with { Offcuts = pieces.Pieces }, list.Sheets, off, parsed.GetValue(one), options.Read(parsed, read!), budget, cancel),
                            answer => (answer.Stash.Plan, answer.Stash.Findings)
                        );
                    findings = [.. findings, .. found];
                }

                if (parsed.GetValue(json))
                {
                    Report.WriteJson(output, CutAnswer.Of(cut, Report.Json(findings)) with { Shelf = rest is null ? null : ShelfOutcome.Of(rest, Leftovers.UsualLeast) });
                }
                else
                {
                    Report.Write(output, findings, planned.Language);
                    if (cut is not null)
                    {
                        CutText.Write(output, cut, planned.Language);
                        foreach (var line in rest?.Rest ?? [])
                        {
                            output.WriteLine(planned.Language.Say(Buy(line)));
                        }

                        output.WriteLine(planned.Language.Say(Report.ExitFor(findings) == ExitCode.Good ? "command.stash.enough" : "command.stash.short"));
                    }
                }

                return Task.FromResult(cut is null ? ExitCode.Findings : Report.ExitFor(findings));
            }
        );
        return command;
    }

    private static Message Buy(RestToBuy rest) =>
        Message.Of(
            rest.Purchase.IsZero ? "command.stash.rest.none" : "command.stash.rest",
            ("letter", rest.Cloth.Letter),
            ("there", (int)rest.FromShelf),
            ("wanted", (int)rest.Wanted),
            ("length", rest.Purchase)
        );

    private static Checked<OffcutList> ReadLeftovers(string? path)
    {
        if (path is null)
        {
            return Checked<OffcutList>.Of(new([]));
        }

        var bytes = InputFile.Read(path);
        var list = bytes.Value is null ? Checked<OffcutList>.Failed(bytes.Findings) : OffcutFile.Read(bytes.Value);
        return list with { Findings = [.. list.Findings.Select(f => f with { Place = $"--shelf {f.Place}" })] };
    }

    /// <summary>A list with columns, or lines as a quilter writes them down.</summary>
    private static Checked<ClothList> ReadCloths(string? path, Length usualWidth, LengthUnit unit)
    {
        if (path is null)
        {
            return Checked<ClothList>.Of(new([]));
        }

        var bytes = InputFile.Read(path);
        if (bytes.Value is null)
        {
            return new(null, bytes.Findings);
        }

        var cloths = ClothList.ReadAny(bytes.Value, usualWidth, unit);
        return cloths with { Findings = [.. cloths.Findings.Select(f => f with { Place = $"--cloth {f.Place}" })] };
    }
}
