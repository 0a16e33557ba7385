using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Shop;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>serve</c>: the web app on loopback.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5151;

    private static string UsualDatabase { get; } =
        Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
            "kitwright",
            "shop.db"
        );

    public static Command Make()
    {
        var port = new Option<int>("--port")
        {
            Description = Inputs.Say("command.port"),
            DefaultValueFactory = _ => UsualPort,
        };
        var database = new Option<string>("--database")
        {
            Description = Inputs.Say("command.database"),
            DefaultValueFactory = _ => UsualDatabase,
        };
        var command = new Command("serve", Inputs.Say("command.serve")) { port, database };
        command.SetAction(
            async (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                try
                {
                    using var store = ShopStore.Open(parsed.GetValue(database)!, TimeProvider.System);
                    await store.Demo.Seed(cancel);
                    await using var app = WebApp.Build(new(parsed.GetValue(port), await ShopWorkbench.OfStore(store, cancel), store));
                    await app.StartAsync(cancel);
                    output.WriteLine(Catalog.English.Say("command.serving", ("address", app.Urls.First())));
                    await app.WaitForShutdownAsync(cancel);
                    return ExitCode.Good;
                }
                catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
                {
                    Report.Write(output, [Finding.Of("serve.cannot-start", "serve", ("why", fault.Message))], Inputs.Language(parsed));
                    return ExitCode.Findings;
                }
            }
        );
        return command;
    }
}
