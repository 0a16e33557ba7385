using System.Collections.Immutable;
using Kitwright.App.Web;

namespace Kitwright.App.Api;

/// <summary>What one way into the API takes, gives and is for, as its OpenAPI document says it.</summary>
internal static class ApiEndpoint
{
    /// <summary>Says in words what it does: the template's text.</summary>
    public static RouteHandlerBuilder Described(this RouteHandlerBuilder endpoint, string key) =>
        endpoint
            .WithName(key["api.".Length..])
            .WithSummary(Saying.Say(key))
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .ProducesProblem(StatusCodes.Status422UnprocessableEntity);

    /// <summary>A JSON document of a published schema is its body.</summary>
    public static RouteHandlerBuilder Takes(this RouteHandlerBuilder endpoint, string schema) =>
        endpoint.Accepts<Stream>("application/json").WithMetadata(new DocumentSchemas([schema], []));

    /// <summary>A JSON document of a published schema is its answer, or a PDF where the name is null.</summary>
    /// <param name="types">Media types of the answer, where it is neither.</param>
    public static RouteHandlerBuilder Gives(this RouteHandlerBuilder endpoint, string? schema, params string[] types) =>
        endpoint
            .Produces<Stream>(StatusCodes.Status200OK, types.FirstOrDefault() ?? (schema is null ? "application/pdf" : "application/json"), types.Skip(1).ToArray())
            .WithMetadata(new DocumentSchemas([], string.IsNullOrEmpty(schema) ? [] : [schema]));
}

/// <summary>Names of published schemas, for the OpenAPI document.</summary>
internal sealed record DocumentSchemas(ImmutableArray<string> Taken, ImmutableArray<string> Given);
