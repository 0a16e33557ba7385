using System.CommandLine;
using System.Text;
using Kitwright.App.Features.Beginning;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.App.Commands;

/// <summary><c>begin BLOCK</c>: a new quilt file with a block of the book.</summary>
internal static class BeginCommand
{
    public static Command Make()
    {
        var block = new Argument<string>("BLOCK") { Description = Inputs.Say("command.begin.block") };
        var name = Text("--name", "command.begin.name");
        var units = Text("--units", "command.begin.units");
        units.AcceptOnlyFromAmong("in", "cm");
        var size = Text("--size", "command.begin.size");
        var set = Text("--set", "command.begin.set");
        var sashing = Text("--sashing", "command.begin.sashing");
        var border = Text("--border", "command.begin.border");
        var stock = Inputs.Stock();
        var path = Text("--out", "command.out");
        var command = new Command("begin", Inputs.Say("command.begin")) { block, name, units, size, set, sashing, border, stock, path };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            // "5x6"; a count that is left out is not a number, and says so.
            var counts = parsed.GetValue(set)?.ToLowerInvariant().Split('x', 2);
            var form = new BeginForm(
                parsed.GetValue(name),
                parsed.GetValue(units),
                parsed.GetValue(size),
                counts?[0],
                counts is null ? null : counts.Length < 2 ? $"{counts[0]}x" : counts[1],
                parsed.GetValue(sashing),
                parsed.GetValue(border)
            );
            var shelf = Inputs.ReadStock(parsed.GetValue(stock));
            var made = Begin(parsed.GetValue(block)!, form);
            var findings = shelf.Findings.AddRange(made.Findings);
            if (made.Value is { } quilt && shelf.Value is { } cloths)
            {
                if (FirstColorway.Of(quilt, cloths, Inputs.Say("begin.colorway.name")) is { } colorway)
                {
                    quilt = quilt with { Colorways = [colorway] };
                }

                if (parsed.GetValue(path) is { } file)
                {
                    findings = [.. findings, .. Outputs.Write(output, file, stream => stream.Write(Encoding.UTF8.GetBytes(QuiltFile.Write(quilt))))];
                }
                else
                {
                    output.Write(QuiltFile.Write(quilt));
                }
            }

            Report.Write(output, findings, Inputs.Language(parsed, made.Value));
            return Report.ExitFor(findings);
        });
        return command;
    }

    private static Checked<Quilt> Begin(string id, BeginForm form)
    {
        if (BlockBook.Find(id) is not { } block)
        {
            return Checked<Quilt>.Failed(Finding.Of("blocks.unknown", "BLOCK", ("id", id)));
        }

        var (asked, findings) = form.Read(block, LengthUnit.Inch);
        return findings.IsEmpty ? asked.Make() : new(null, findings);
    }

    private static Option<string?> Text(string name, string description) => new(name) { Description = Inputs.Say(description) };
}
