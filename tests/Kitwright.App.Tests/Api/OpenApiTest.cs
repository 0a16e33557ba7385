using Kitwright.App.Tests.Browser;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;

namespace Kitwright.App.Tests.Api;

/// <summary>The OpenAPI document: valid, whole, and true to the routes.</summary>
public sealed class OpenApiTest
{
    [Fact]
    public async Task It_is_valid_and_holds_every_route_with_its_problems()
    {
        await using var shop = await Chromium.Shop();
        using var api = new ApiClient(new Uri(shop.Urls.Single()));
        var text = (await api.Get("/api/openapi.json")).Body;

        var (document, diagnostic) = OpenApiDocument.Parse(text, "json");
        Assert.Empty(diagnostic!.Errors);
        var operations = document!.Paths.SelectMany(path => path.Value.Operations!.Select(op => (Route: $"{op.Key} {path.Key}", Operation: op.Value))).ToList();

        var routes = shop.Services.GetRequiredService<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText!.StartsWith("/api/", StringComparison.Ordinal) && !e.RoutePattern.RawText.EndsWith(".json", StringComparison.Ordinal))
            .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods.Select(m => $"{m} {e.RoutePattern.RawText!.Replace(":guid", "", StringComparison.Ordinal)}"));
        Assert.Equal(routes.Order(), operations.Select(o => o.Route).Order());
        Assert.All(operations, o => Assert.NotEqual("", o.Operation.Summary));
        Assert.All(operations, o => Assert.Equal("application/problem+json", o.Operation.Responses!["422"].Content!.Keys.Single()));
        Assert.Equal(operations.Count, operations.Select(o => o.Operation.OperationId).Distinct().Count());
    }

    [Fact]
    public async Task The_schemas_that_it_names_are_served()
    {
        await using var shop = await Chromium.Shop();
        using var api = new ApiClient(new Uri(shop.Urls.Single()));
        var text = (await api.Get("/api/openapi.json")).Body;

        var named = System.Text.RegularExpressions.Regex.Matches(text, @"/api/schemas/[a-z]+\b").Select(m => m.Value).Distinct().ToList();

        Assert.Contains("/api/schemas/plan", named);
        foreach (var path in named)
        {
            Assert.Equal("https://json-schema.org/draft/2020-12/schema", (await api.Get(path)).Json.GetProperty("$schema").GetString());
        }
    }
}
