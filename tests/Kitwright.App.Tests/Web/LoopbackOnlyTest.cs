using System.Net;
using Kitwright.App.Tests.Browser;

namespace Kitwright.App.Tests.Web;

public sealed class LoopbackOnlyTest(Chromium chromium)
{
    [Theory]
    [InlineData("quilts.example", null)]
    [InlineData("127.0.0.1.example", null)]
    [InlineData(null, "http://quilts.example")]
    [InlineData(null, "null")]
    [InlineData(null, "http://127.0.0.1:1")]
    public async Task A_foreign_host_or_origin_is_refused(string? host, string? origin) =>
        Assert.Equal(HttpStatusCode.BadRequest, (await Ask(host, origin)).StatusCode);

    [Fact]
    public async Task The_app_s_own_names_and_pages_are_served()
    {
        Assert.Equal(HttpStatusCode.OK, (await Ask(null, null)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Ask($"localhost:{chromium.Address.Port}", null)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Ask(null, chromium.Address.GetLeftPart(UriPartial.Authority))).StatusCode);
    }

    [Fact]
    public async Task Every_answer_carries_the_security_headers()
    {
        var answer = await Ask(null, null);

        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
    }

    [Fact]
    public async Task A_page_holds_no_inline_script_or_style()
    {
        var html = await (await Ask(null, null)).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.DoesNotMatch("<script(?![^>]*src=)", html);
        Assert.DoesNotMatch("<style|\\sstyle=|\\son[a-z]+=", html);
    }

    private async Task<HttpResponseMessage> Ask(string? host, string? origin)
    {
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, chromium.Address);
        request.Headers.Host = host;
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin);
        }

        return await client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
