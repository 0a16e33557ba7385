using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.Exchange;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Shop;
using Kitwright.Shop.Ledger;
using Kitwright.Stock;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>stock FILE --dry-run | --into DATABASE</c>: takes a stock file over, or says what that would do.</summary>
internal static class StockCommand
{
    private const int MostLines = 20;

    public static Command Make()
    {
        var file = new Argument<string>("FILE") { Description = Inputs.Say("command.stock.file") };
        var into = new Option<string?>("--into") { Description = Inputs.Say("command.stock.into") };
        var dryRun = new Option<bool>("--dry-run") { Description = Inputs.Say("command.stock.dry-run") };
        var column = new Option<string[]>("--column") { Description = Inputs.Say("command.stock.column") };
        var json = Inputs.Json();
        var command = new Command("stock", Inputs.Say("command.stock-file")) { file, into, dryRun, column, json };
        command.Validators.Add(result =>
        {
            if (result.GetValue(into) is null && !result.GetValue(dryRun))
            {
                result.AddError(Inputs.Say("command.stock.neither"));
            }
        });
        command.SetAction(
            async (parsed, cancel) =>
            {
                var import = await Import(
                    parsed.GetValue(file)!,
                    parsed.GetValue(into),
                    parsed.GetValue(dryRun),
                    parsed.GetValue(column) ?? [],
                    cancel
                );
                Answer(parsed.InvocationConfiguration.Output, import, parsed.GetValue(json), Inputs.Language(parsed));
                return import.Value is null ? ExitCode.Findings : Report.ExitFor(import.Findings);
            }
        );
        return command;
    }

    private static async Task<Checked<StockImport>> Import(string path, string? database, bool dryRun, string[] columns, CancellationToken cancel)
    {
        var names = Names(columns);
        var bytes = InputFile.Read(path);
        if (names.Value is null || bytes.Value is null)
        {
            return Checked<StockImport>.Failed([.. names.Findings, .. bytes.Findings]);
        }

        // A dry run makes no database, and neither does a file with a fault.
        var read = StockFile.Read(bytes.Value, names.Value);
        if (read.Value is null || database is null || (dryRun && !File.Exists(database)))
        {
            return new(read.Value is { } empty ? StockImport.IntoEmpty(empty) : null, read.Findings);
        }

        try
        {
            using var store = ShopStore.Open(database, TimeProvider.System);
            var intake = await StockIntake.Of(store, Guid.NewGuid(), bytes.Value, names.Value, cancel);
            if (dryRun || intake.Would is null)
            {
                return new(intake.Would, intake.Findings);
            }

            var import = await intake.TakeOver(store, cancel);
            return new(import.Value, [.. read.Findings, .. import.Findings]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Checked<StockImport>.Failed(Finding.Of("file.unwritable", database, ("path", database), ("why", fault.Message)));
        }
    }

    /// <param name="columns">COLUMN=NAME.</param>
    public static Checked<ImmutableDictionary<StockColumn, string>> Names(string[] columns)
    {
        var names = ImmutableDictionary.CreateBuilder<StockColumn, string>();
        foreach (var text in columns)
        {
            var parts = text.Split('=', 2);
            if (parts.Length < 2 || StockColumns.Named(parts[0]) is not { } column)
            {
                return Checked<ImmutableDictionary<StockColumn, string>>.Failed(
                    Finding.Of(
                        "command.stock.column.bad",
                        "--column",
                        ("text", text),
                        ("names", string.Join(", ", Enum.GetValues<StockColumn>().Select(StockColumns.NameOf)))
                    )
                );
            }

            names[column] = parts[1];
        }

        return Checked<ImmutableDictionary<StockColumn, string>>.Of(names.ToImmutable());
    }

    private static void Answer(TextWriter output, Checked<StockImport> import, bool json, Catalog words)
    {
        if (json)
        {
            Report.WriteJson(output, StockAnswer.Of(import));
            return;
        }

        Report.Write(output, import.Findings, words);
        if (import.Value is not { } done)
        {
            return;
        }

        output.WriteLine(words.Say(ImportWords.Sum(done)));
        List(output, done.NewFabrics, ImportWords.New, words);
        List(output, done.ChangedFabrics, ImportWords.Changed, words);
        List(output, done.Received, ImportWords.Received, words);
        List(output, done.Counted, ImportWords.Counted, words);
        if (done.NotInFile.Length > 0)
        {
            output.WriteLine(words.Say("stock.import.left", ("count", done.NotInFile.Length)));
        }
    }

    private static void List<T>(TextWriter output, ImmutableArray<T> items, Func<T, Message> say, Catalog words)
    {
        foreach (var item in items.Take(MostLines))
        {
            output.WriteLine("  " + words.Say(say(item)));
        }

        if (items.Length > MostLines)
        {
            output.WriteLine("  " + words.Say("stock.import.more", ("count", items.Length - MostLines)));
        }
    }
}

/// <summary>What <c>stock --json</c> prints.</summary>
internal sealed record StockAnswer(string Format, int Version, StockImport? Import, ImmutableArray<FindingJson> Findings)
{
    public static StockAnswer Of(Checked<StockImport> import) => new("kitwright-stock", 1, import.Value, Report.Json(import.Findings));
}
