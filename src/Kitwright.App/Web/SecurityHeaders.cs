namespace Kitwright.App.Web;

/// <summary>A content security policy without inline script or style, and the headers that go with it.</summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        // The websocket is named apart from 'self', which not every browser lets stand for ws. The host has been
        // checked to be loopback before it is repeated here.
        headers.ContentSecurityPolicy =
            "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; "
            + $"connect-src 'self' ws://{context.Request.Host.Value}; base-uri 'self'; form-action 'self'; "
            + "frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        return next(context);
    }
}
