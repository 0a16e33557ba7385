using Kitwright.App.Tests.Browser;
using Kitwright.App.Tests.Commands;

namespace Kitwright.App.Tests.Api;

/// <summary>Faults are problem details, whatever the fault.</summary>
public sealed class ProblemsTest(Chromium chromium)
{
    [Theory]
    [InlineData("/api/quilts/no-such-quilt/plan", 404, "api.no-quilt")]
    [InlineData("/api/quilts/no-such-quilt", 404, "api.no-quilt")]
    [InlineData("/api/quilts/ostrel-bay-stars/plan?colorway=nobody", 422, "command.colorway.unknown")]
    [InlineData("/api/quilts/ostrel-bay-stars/kits?want=nobody", 422, "command.want.bad")]
    [InlineData("/api/quilts/ostrel-bay-stars/booklet?paper=A9", 422, "api.query")]
    [InlineData("/api/quilts/ostrel-bay-stars/bag?form=sewn", 422, "api.query")]
    [InlineData("/api/stock/00000000-0000-0000-0000-000000000001", 404, "api.no-booking")]
    [InlineData("/api/schemas/nothing", 404, "api.no-schema")]
    [InlineData("/api/no-such-verb", 404, null)]
    [InlineData("/api/stock/no-id", 404, null)]
    [InlineData("/api/quilts/ostrel-bay-stars/kits?each=many", 400, null)]
    public async Task What_cannot_be_answered_is_a_problem(string path, int status, string? rule)
    {
        using var api = new ApiClient(chromium.Address);

        Assert.Equal(rule is null ? [] : [rule], (await api.Get(path)).Problem(status));
    }

    [Fact]
    public async Task So_are_a_wrong_method_a_wrong_type_and_a_body_that_is_nothing()
    {
        using var api = new ApiClient(chromium.Address);
        (await api.Put("/api/plan", "{}")).Problem(405);
        (await api.Post("/api/plan", "{}", "text/plain")).Problem(415);
        Assert.NotEmpty((await api.Post("/api/plan", "")).Problem(422));
        Assert.NotEmpty((await api.Post("/api/check", "[]")).Problem(422));
    }

    [Theory]
    [InlineData("multipart/form-data", "x")]
    [InlineData("multipart/form-data; boundary=", "x")]
    [InlineData("multipart/form-data; boundary=edge", "--edge\r\nContent-Disposition: form-data; name=\"pieces\"; filename=\"a\"\r\n\r\nlab")]
    [InlineData("multipart/form-data; boundary=edge", "--edge\r\nContent-Disp")]
    public async Task A_form_without_boundary_or_cut_off_is_a_finding(string type, string body)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        using var content = new ByteArrayContent(System.Text.Encoding.UTF8.GetBytes(body));
        content.Headers.TryAddWithoutValidation("Content-Type", type);
        var answer = await client.PostAsync("/api/cut?width=42", content, TestContext.Current.CancellationToken);
        Assert.Equal(422, (int)answer.StatusCode);
        Assert.Contains("api.form", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_body_without_end_is_refused_before_it_is_held()
    {
        using var api = new ApiClient(chromium.Address);
        Assert.Equal(["api.too-large"], (await api.Post("/api/plan", new string(' ', 34 * 1024 * 1024))).Problem(413));
    }

    [Theory]
    [InlineData("Host", "quilts.example")]
    [InlineData("Origin", "http://quilts.example")]
    [InlineData("Origin", "null")]
    public async Task A_foreign_host_or_origin_is_refused(string header, string value)
    {
        using var api = new ApiClient(chromium.Address);
        (await api.Send(HttpMethod.Post, "/api/plan", await File.ReadAllTextAsync(Run.Stars, TestContext.Current.CancellationToken), "application/json", (header, value))).Problem(400);
        (await api.Send(HttpMethod.Put, $"/api/stock/{Guid.NewGuid()}", "fabric", "text/csv", (header, value))).Problem(400);
    }

    [Fact]
    public async Task A_problem_s_type_can_be_followed()
    {
        using var api = new ApiClient(chromium.Address);
        var type = (await api.Get("/api/quilts/no-such-quilt")).Json.GetProperty("type").GetString()!;

        Assert.Equal("There is no such thing in the shop.", (await api.Get(type)).Body);
    }
}
