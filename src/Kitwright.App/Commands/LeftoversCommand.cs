using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Api;
using Kitwright.Cutting.Sheets;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Shop;
using Kitwright.Shop.Ledger;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>leftovers FILE --in DATABASE --as WHAT</c>: lists the leftovers on the shelf, or books a list of them.</summary>
internal static class LeftoversCommand
{
    public static Command Make()
    {
        var file = new Argument<string?>("FILE") { Description = Inputs.Say("command.leftovers.file"), Arity = ArgumentArity.ZeroOrOne };
        var database = new Option<string>("--in") { Description = Inputs.Say("command.leftovers.in"), Required = true };
        var kind = new Option<string>("--as") { Description = Inputs.Say("command.leftovers.as"), DefaultValueFactory = _ => "shelved" };
        kind.AcceptOnlyFromAmong([.. OffcutVerbs.Kinds.Keys]);
        var id = new Option<Guid?>("--id") { Description = Inputs.Say("command.leftovers.id") };
        var json = Inputs.Json();
        var command = new Command("leftovers", Inputs.Say("command.leftovers")) { file, database, kind, id, json };
        command.SetAction(
            async (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (pieces, booked, findings) = await Run(
                    parsed.GetValue(file),
                    parsed.GetValue(database)!,
                    OffcutVerbs.Kinds[parsed.GetValue(kind)!],
                    parsed.GetValue(id) ?? Guid.NewGuid(),
                    cancel
                );
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(output, new { pieces, booked, findings = Report.Json(findings) });
                }
                else
                {
                    Report.Write(output, findings, Inputs.Language(parsed));
                    if (findings.IsEmpty)
                    {
                        output.Write(OffcutFile.Write(pieces));
                    }
                }

                return Report.ExitFor(findings);
            }
        );
        return command;
    }

    private static async Task<(ImmutableArray<Offcut> Pieces, OffcutsBooked? Booked, ImmutableArray<Finding> Findings)> Run(
        string? path,
        string database,
        OffcutKind kind,
        Guid id,
        CancellationToken cancel
    )
    {
        var list = Checked<OffcutList>.Of(new([]));
        if (path is not null)
        {
            var bytes = InputFile.Read(path);
            list = bytes.Value is null ? Checked<OffcutList>.Failed(bytes.Findings) : OffcutFile.Read(bytes.Value);
        }

        if (list.Value is not { } read)
        {
            return ([], null, list.Findings);
        }

        if (!File.Exists(database))
        {
            return ([], null, [Finding.Of("leftovers.no-shop", database, ("path", database))]);
        }

        try
        {
            using var store = ShopStore.Open(database, TimeProvider.System);
            if (path is null)
            {
                return (await store.Offcuts.All(cancel), null, []);
            }

            var lines = read.Pieces.Select(p => new OffcutLine(p.Fabric, p.Width, p.Height, kind, p.Count, p.From));
            var booked = await store.Offcuts.Book(new(id, Environment.UserName, [.. lines]), cancel);
            return (await store.Offcuts.All(cancel), booked.Value, booked.Findings);
        }
        catch (StorageException fault)
        {
            return ([], null, [fault.Finding]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return ([], null, [Finding.Of("file.unwritable", database, ("path", database), ("why", fault.Message))]);
        }
    }
}
