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
            var assembly = typeof(SchemaCommand).Assembly;
            var names = assembly
                .GetManifestResourceNames()
                .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
                .Select(n => n[Folder.Length..^Ending.Length])
                .Order()
                .ToArray();
            var wanted = parsed.GetValue(name);
            if (wanted is null)
            {
                output.WriteLine(string.Join(Environment.NewLine, names));
                return ExitCode.Good;
            }

            // "quilt" is enough where one version exists.
            var found = names.FirstOrDefault(n => n == wanted) ?? names.LastOrDefault(n => n.StartsWith(wanted + ".v", StringComparison.Ordinal));
            if (found is null)
            {
                Report.Write(
                    output,
                    [Finding.Of("command.schema.unknown", "NAME", ("name", wanted), ("names", string.Join(", ", names)))]
                );
                return ExitCode.Findings;
            }

            using var reader = new StreamReader(assembly.GetManifestResourceStream(Folder + found + Ending)!);
            output.WriteLine(reader.ReadToEnd().TrimEnd());
            return ExitCode.Good;
        });
        return command;
    }
}
