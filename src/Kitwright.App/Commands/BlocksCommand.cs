using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using System.Text.Json;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>blocks list</c>, <c>blocks show ID</c>, <c>blocks export ID</c>: the book of traditional blocks.</summary>
internal static class BlocksCommand
{
    private static readonly string[] Families = [.. Enum.GetNames<BlockFamily>().Select(JsonNamingPolicy.KebabCaseLower.ConvertName)];

    public static Command Make() => new("blocks", Inputs.Say("command.blocks")) { MakeList(), MakeShow(), MakeExport() };

    private static Command MakeList()
    {
        var family = new Option<string?>("--family") { Description = Inputs.Say("command.blocks.family") };
        family.AcceptOnlyFromAmong(Families);
        var json = Inputs.Json();
        var command = new Command("list", Inputs.Say("command.blocks.list")) { family, json };
        command.SetAction(parsed =>
        {
            var chosen = BlockBook.All.Where(b => parsed.GetValue(family) is not { } only || NameOf(b.Family) == only).ToImmutableArray();
            var output = parsed.InvocationConfiguration.Output;
            if (parsed.GetValue(json))
            {
                Report.WriteJson(output, new { blocks = chosen.Select(Line), findings = Report.Json([]) });
                return ExitCode.Good;
            }

            foreach (var chapter in chosen.GroupBy(b => b.Family))
            {
                output.WriteLine(Inputs.Language(parsed).Say(BookBlock.ChapterOf(chapter.Key)));
                foreach (var block in chapter)
                {
                    output.WriteLine(Inputs.Language(parsed).Say("blocks.line", ("id", block.Id), ("name", block.Name), ("patches", block.Patches.Length)));
                }
            }

            return ExitCode.Good;
        });
        return command;
    }

    private static Command MakeShow()
    {
        var id = Id();
        var json = Inputs.Json();
        var command = new Command("show", Inputs.Say("command.blocks.show")) { id, json };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var found = Find(parsed.GetValue(id)!);
            if (parsed.GetValue(json))
            {
                Report.WriteJson(output, new { block = found.Value is { } shown ? Line(shown) : null, findings = Report.Json(found.Findings) });
            }
            else if (found.Value is { } block)
            {
                Show(output, block, Inputs.Language(parsed));
            }
            else
            {
                Report.Write(output, found.Findings, Inputs.Language(parsed));
            }

            return Report.ExitFor(found.Findings);
        });
        return command;
    }

    private static Command MakeExport()
    {
        var id = Id();
        var path = new Option<string?>("--out") { Description = Inputs.Say("command.out") };
        var command = new Command("export", Inputs.Say("command.blocks.export")) { id, path };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var found = Find(parsed.GetValue(id)!);
            var findings = found.Findings;
            if (found.Value is { } block && parsed.GetValue(path) is { } file)
            {
                findings = [.. findings, .. Outputs.Write(output, file, stream => stream.Write(Encoding.UTF8.GetBytes(BlockFile.Write(block))))];
            }
            else if (found.Value is not null)
            {
                output.Write(BlockFile.Write(found.Value));
            }

            Report.Write(output, findings, Inputs.Language(parsed));
            return Report.ExitFor(findings);
        });
        return command;
    }

    private static Argument<string> Id() => new("ID") { Description = Inputs.Say("command.blocks.id") };

    private static Checked<BookBlock> Find(string id) =>
        BlockBook.Find(id) is { } block ? Checked<BookBlock>.Of(block) : Checked<BookBlock>.Failed(Finding.Of("blocks.unknown", "ID", ("id", id)));

    private static string NameOf(BlockFamily family) => JsonNamingPolicy.KebabCaseLower.ConvertName(family.ToString());

    public static object Line(BookBlock block) =>
        new
        {
            block.Id,
            block.Name,
            family = NameOf(block.Family),
            block.Source,
            columns = block.Grid.Columns,
            rows = block.Grid.Rows,
            roles = block.Roles.Select(role => new { role.Id, role.Name, patches = Count(block, role.Id) }),
            patches = block.Patches.Length,
        };

    private static int Count(BookBlock block, string role) => block.Patches.Count(p => p.Role == role);

    private static void Show(TextWriter output, BookBlock block, Catalog words)
    {
        output.WriteLine(
            words.Say(
                "blocks.shown",
                ("name", block.Name),
                ("family", BookBlock.ChapterOf(block.Family)),
                ("columns", block.Grid.Columns),
                ("rows", block.Grid.Rows),
                ("source", block.Source is { } source ? Message.Plain(source) : Message.Of("blocks.from-memory"))
            )
        );
        foreach (var role in block.Roles)
        {
            output.WriteLine(words.Say("blocks.role", ("role", role.Name), ("patches", Count(block, role.Id))));
        }
    }
}
