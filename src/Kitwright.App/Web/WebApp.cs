using Kitwright.App.Api;
using Kitwright.App.Components;
using Kitwright.App.Features.BlockDrawing;
using Kitwright.App.Features.Desk;
using Kitwright.App.Features.KitsStop;
using Kitwright.App.Features.Licensing;
using Kitwright.App.Features.PatternStop;
using Kitwright.App.Features.Pictures;
using Kitwright.App.Features.QuiltFiles;
using Kitwright.App.Features.SewStop;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.XmlEncryption;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;

namespace Kitwright.App.Web;

/// <summary>Puts the web app together; the command <c>serve</c> and the browser tests run what this returns.</summary>
public static class WebApp
{
    /// <summary>Bytes: a table that somebody pastes comes in one message.</summary>
    private const int LongestMessage = 2 * 1024 * 1024;

    /// <summary>
    /// Pages kept for a browser that may come back; a page is its address, so one that is not kept is loaded again.
    /// </summary>
    private const int CircuitsKept = 2;

    public static WebApplication Build(WebOptions options)
    {
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions
            {
                ApplicationName = typeof(WebApp).Assembly.GetName().Name,
                ContentRootPath = AppContext.BaseDirectory,
            }
        );

        // From a build folder the assets are found through a manifest, whatever the environment is called; a
        // published folder has no manifest and serves its own wwwroot.
        StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        builder.WebHost.UseUrls($"http://127.0.0.1:{options.Port}");
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // A start that fails is reported as a finding, once.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);

        builder.Services.AddDataProtection();
        builder.Services.Configure<KeyManagementOptions>(keys =>
        {
            keys.XmlRepository = new KeysInMemory();
            keys.XmlEncryptor = new NullXmlEncryptor();
        });
        builder.Services.AddSingleton(options.Workbench);
        builder.Services.AddSingleton(options.Store);
        builder.Services.AddSingleton(new DraftLog(Path.Combine(options.Store.Folder, "drafts")));
        builder.Services.AddHostedService<Tidying>();
        builder.Services.AddScoped<Arrival>();
        builder.Services.AddScoped<Whereabouts>();
        builder.Services.AddRazorComponents()
            .AddInteractiveServerComponents(circuits => circuits.DisconnectedCircuitMaxRetained = CircuitsKept)
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LongestMessage);

        builder.Services.AddApi();
        // A body is read up to the limits of its own kind.
        builder.WebHost.ConfigureKestrel(server => server.Limits.MaxRequestBodySize = null);

        var app = builder.Build();
        app.UseApiProblems();
        app.UseMiddleware<LoopbackOnly>();
        app.UseMiddleware<SecurityHeaders>();
        app.UseStatusCodePagesWithReExecute("/not-found");
        // Within, so that what the API lacks is a problem before it becomes a page.
        app.UseApiProblems();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapFonts();
        app.MapCloths();
        app.MapBooklet();
        app.MapBag();
        app.MapDrawing();
        app.MapQuiltFiles();
        app.MapPublicPage();
        app.MapTemplates();
        app.MapApi();
        app.MapRazorComponents<Document>()
            .AddInteractiveServerRenderMode(mode => mode.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }
}
