using System.CommandLine;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>The verbs of the command line.</summary>
public static class CommandLine
{
    public static async Task<int> RunAsync(string[] args, TextWriter output, TextWriter error)
    {
        var words = Catalog.English;
        var root = new RootCommand(words.Say("command.root"))
        {
            PlanCommand.Make(),
            CheckCommand.Make(),
            CutCommand.Make(),
            StashCommand.Make(),
            KitsCommand.Make(),
            BagCommand.Make(),
            BookletCommand.Make(),
            SewCommand.Make(),
            AccuracyCommand.Make(),
            TemplatesCommand.Make(),
            StockCommand.Make(),
            LeftoversCommand.Make(),
            DrawCommand.Make(),
            BlocksCommand.Make(),
            BeginCommand.Make(),
            SetsCommand.Make(),
            SizesCommand.Make(),
            ServeCommand.Make(),
            SchemaCommand.Make(),
            Inputs.Words(),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var fault in parsed.Errors)
            {
                await error.WriteLineAsync(fault.Message);
            }

            await error.WriteLineAsync(words.Say("command.see-help"));
            return ExitCode.Usage;
        }

        try
        {
            return await parsed.InvokeAsync(
                new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false }
            );
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            await error.WriteLineAsync(words.Say("command.our-fault", ("what", $"{fault.GetType().Name}: {fault.Message}")));
            if (Environment.GetEnvironmentVariable("KITWRIGHT_TRACE") == "1")
            {
                await error.WriteLineAsync(fault.ToString());
            }

            return ExitCode.OurFault;
        }
    }
}

/// <summary>What every command answers to the shell.</summary>
internal static class ExitCode
{
    public const int Good = 0;
    public const int Findings = 1;
    public const int Usage = 2;
    public const int OurFault = 3;
}
