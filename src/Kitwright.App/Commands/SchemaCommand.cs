using System.CommandLine;
using Kitwright.Findings;

namespace Kitwright.App.Commands;

/// <summary><c>schema NAME</c>: the JSON Schemas of docs/schema, which are built into the executable.</summary>
internal static class SchemaCommand
{
    private const string Folder = "schema/";
    private const string Ending = ".schema.json";

    public static Command Make()
    {
        var name = new Argument<string?>("NAME")
        {
            Description = Inputs.Say("command.schema.name"),
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("schema", Inputs.Say("command.schema")) { name };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var names = Names();
            var wanted = parsed.GetValue(name);
            if (wanted is null)
            {
                output.WriteLine(string.Join(Environment.NewLine, names));
                return ExitCode.Good;
            }

            if (Text(wanted) is not { } text)
            {
                Report.Write(
                    output,
                    [Finding.Of("command.schema.unknown", "NAME", ("name", wanted), ("names", string.Join(", ", names)))],
                    Inputs.Language(parsed)
                );
                return ExitCode.Findings;
            }

            output.WriteLine(text);
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>The schema of that name; "quilt" is enough where one version exists. Null where there is none.</summary>
    public static string? Text(string name)
    {
        var names = Names();
        var found = names.FirstOrDefault(n => n == name) ?? names.LastOrDefault(n => n.StartsWith(name + ".v", StringComparison.Ordinal));
        if (found is null)
        {
            return null;
        }

        using var reader = new StreamReader(typeof(SchemaCommand).Assembly.GetManifestResourceStream(Folder + found + Ending)!);
        return reader.ReadToEnd().TrimEnd();
    }

    private static string[] Names() =>
        [
            .. typeof(SchemaCommand).Assembly.GetManifestResourceNames()
                .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
                .Select(n => n[Folder.Length..^Ending.Length])
                .Order(),
        ];
}
