using Kitwright.App.Commands;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Words;

namespace Kitwright.App.Api;

/// <summary>The HTTP API: the commands' verbs for other programs on this machine, described by an OpenAPI document.</summary>
public static class ApiMap
{
    public const string Path = "/api";

    public static void AddApi(this IServiceCollection services)
    {
        services.AddProblemDetails();
        services.AddOpenApi(options =>
        {
            options.ShouldInclude = endpoint => endpoint.RelativePath?.StartsWith("api/", StringComparison.Ordinal) == true;
            options.AddDocumentTransformer(
                (document, _, _) =>
                {
                    document.Info.Title = Saying.Say("web.name");
                    document.Info.Description = Saying.Say("api.about");
                    // The address is wherever this document was read from.
                    document.Servers?.Clear();
                    return Task.CompletedTask;
                }
            );
            options.AddOperationTransformer(
                (operation, context, _) =>
                {
                    var schemas = context.Description.ActionDescriptor.EndpointMetadata.OfType<DocumentSchemas>().ToList();
                    var said = schemas.SelectMany(s => s.Taken).Select(name => Saying.Say("api.takes", ("schema", $"{Path}/schemas/{name}")))
                        .Concat(schemas.SelectMany(s => s.Given).Select(name => Saying.Say("api.gives", ("schema", $"{Path}/schemas/{name}"))));
                    operation.Description = string.Join(' ', said);
                    return Task.CompletedTask;
                }
            );
        });
    }

    /// <summary>Whatever goes wrong under the API is answered with problem details, and never with a page.</summary>
    public static void UseApiProblems(this WebApplication app) =>
        app.UseWhen(
            IsApi,
            api =>
            {
                api.UseExceptionHandler();
                api.UseStatusCodePages();
            }
        );

    private static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments(Path);

    public static void MapApi(this WebApplication app)
    {
        var api = app.MapGroup(Path);
        api.MapQuiltVerbs();
        api.MapShopVerbs();
        api.MapListVerbs();
        api.MapGet("/schemas/{name}", Schema).Produces<Stream>(StatusCodes.Status200OK, "application/schema+json").Described("api.schema");
        api.MapGet("/problems/{name}", Problem).Produces<string>(StatusCodes.Status200OK, "text/plain").Described("api.problem");
        app.MapOpenApi($"{Path}/openapi.json");
    }

    private static IResult Schema(string name) =>
        SchemaCommand.Text(name) is { } text
            ? Results.Text(text, "application/schema+json")
            : ApiAnswer.Refused(Finding.Of("api.no-schema", $"schemas/{name}", ("name", name)));

    /// <summary>What a problem's type means, for whoever follows it.</summary>
    private static IResult Problem(string name) =>
        Catalog.English.Has($"api.problem.{name}") ? Results.Text(Saying.Say($"api.problem.{name}")) : Results.NotFound();
}
