using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace Kitwright.App.Tests.Api;

/// <summary>A program that speaks to the real server.</summary>
internal sealed class ApiClient(Uri address) : IDisposable
{
    private readonly HttpClient http = new() { BaseAddress = address };

    public Task<Answer> Get(string path) => Send(HttpMethod.Get, path, null, "");

    public Task<Answer> Post(string path, string body, string type = "application/json") => Send(HttpMethod.Post, path, body, type);

    public Task<Answer> Put(string path, string body, string type = "application/json") => Send(HttpMethod.Put, path, body, type);

    public async Task<Answer> Send(HttpMethod method, string path, string? body, string type, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, path);
        if (body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = new MediaTypeHeaderValue(type) } };
        }

        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        using var answer = await http.SendAsync(request, TestContext.Current.CancellationToken);
        return new(
            answer.StatusCode,
            answer.Content.Headers.ContentType?.MediaType ?? "",
            answer.Headers.ETag?.Tag.Trim('"'),
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
        );
    }

    public void Dispose() => http.Dispose();
}

internal sealed record Answer(HttpStatusCode Status, string Type, string? Tag, string Body)
{
    public JsonElement Json => JsonDocument.Parse(Body).RootElement;

    /// <summary>The rules of a problem's findings, once it is one by RFC 9457.</summary>
    public string[] Problem(int status)
    {
        Assert.Equal((status, "application/problem+json"), ((int)Status, Type));
        Assert.Equal(status, Json.GetProperty("status").GetInt32());
        Assert.NotEqual("", Json.GetProperty("title").GetString());
        Assert.DoesNotContain("   at ", Body, StringComparison.Ordinal);
        return Json.TryGetProperty("findings", out var findings)
            ? [.. findings.EnumerateArray().Select(f => f.GetProperty("rule").GetString()!)]
            : [];
    }
}
