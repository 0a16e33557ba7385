using System.Text.Json;
using Kitwright.App.Commands;

namespace Kitwright.App.Tests.Commands;

/// <summary>Runs one command as the shell would, and keeps what it printed.</summary>
internal sealed record Run(int Exit, string Output, string Error)
{
    private static string Root { get; } = FindRoot();

    public static async Task<Run> Of(params string[] args)
    {
        using StringWriter output = new(),
            error = new();
        var exit = await CommandLine.RunAsync(args, output, error);
        return new(exit, output.ToString(), error.ToString());
    }

    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    public static string File(params string[] parts) => Path.Combine([Root, .. parts]);

    public static string Stars { get; } = File("examples", "quilts", "ostrel-bay-stars.json");
    public static string Lantern { get; } = File("examples", "quilts", "lantern-steps.json");

    public static string Stock { get; } = File("examples", "stock.csv");

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !System.IO.File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run inside the repository.");
    }
}
