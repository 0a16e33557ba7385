using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>serve</c>: the web app on loopback.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5151;

    public static Command Make()
    {
        var port = new Option<int>("--port")
        {
            Description = Inputs.Say("command.port"),
            DefaultValueFactory = _ => UsualPort,
        };
        var command = new Command("serve", Inputs.Say("command.serve")) { port };
        command.SetAction(
            async (parsed, cancel) =>
            {
                await using var app = WebApp.Build(new(parsed.GetValue(port), ShopWorkbench.OfExamples()));
                await app.StartAsync(cancel);
                parsed.InvocationConfiguration.Output.WriteLine(
                    Catalog.English.Say("command.serving", ("address", app.Urls.First()))
                );
                await app.WaitForShutdownAsync(cancel);
                return ExitCode.Good;
            }
        );
        return command;
    }
}
