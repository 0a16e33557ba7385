using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.App.Commands;

/// <summary>Files that several verbs write.</summary>
internal static class Outputs
{
    /// <summary>Writes the file and says so, or gives the finding that it cannot be written.</summary>
    public static ImmutableArray<Finding> Write(TextWriter output, string path, Action<Stream> content)
    {
        if (InputFile.Write(path, content) is { } fault)
        {
            return [fault];
        }

        output.WriteLine(Inputs.Say("command.wrote", ("path", path)));
        return [];
    }
}
