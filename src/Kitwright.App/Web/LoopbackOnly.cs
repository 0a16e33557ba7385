using System.Net;

namespace Kitwright.App.Web;

/// <summary>
/// Refuses requests that name another host or come from another site's page. Listening on loopback is not enough: a
/// foreign page can have its own name resolve to 127.0.0.1 and then reach this app through the owner's browser.
/// </summary>
public sealed class LoopbackOnly(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        var request = context.Request;
        if (!IsLoopback(request.Host) || IsForeign(request.Headers.Origin, request.Host))
        {
            context.Response.StatusCode = StatusCodes.Status400BadRequest;
            return Task.CompletedTask;
        }

        return next(context);
    }

    private static bool IsLoopback(HostString host) =>
        host.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    // No Origin header: a plain navigation or a request from no page at all. "null" is an opaque origin, thus foreign.
    private static bool IsForeign(string? origin, HostString host) =>
        !string.IsNullOrEmpty(origin)
        && !string.Equals(origin, $"http://{host.Value}", StringComparison.OrdinalIgnoreCase);
}
