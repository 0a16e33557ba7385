using Kitwright.Plans;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Kitwright.App.Features.Desk;

/// <summary>
/// What a page shows, as its address: nothing that a person chose lives anywhere else, so a page can be reloaded, sent
/// on and gone back from.
/// </summary>
/// <param name="Slug">The quilt.</param>
/// <param name="Colorway">Name of the colorway; null for the quilt's first.</param>
/// <param name="At">What is touched; the empty path for nothing.</param>
/// <param name="Try">Changes that are tried and not kept.</param>
/// <param name="Kits">How many kits of which colorway, as <see cref="Wanted"/> writes them; null for the usual.</param>
public sealed record DeskAddress(string Slug, Stop Stop, string? Colorway, PathId At, string? Try, string? Kits)
{
    /// <summary>
    /// Where the browser is now. What is shown may lag behind while it is planned, so changes start from here.
    /// </summary>
    public static DeskAddress Now(NavigationManager navigation)
    {
        var uri = new Uri(navigation.Uri);
        var path = uri.AbsolutePath.Split('/', StringSplitOptions.RemoveEmptyEntries);
        var query = QueryHelpers.ParseQuery(uri.Query);
        return new(
            path.ElementAtOrDefault(1) ?? "",
            Enum.TryParse<Stop>(path.ElementAtOrDefault(2), ignoreCase: true, out var stop) ? stop : Stop.Quilt,
            Value("colorway"),
            new(Value("at")),
            Value("try"),
            Value("kits")
        );

        string? Value(string name) => query.TryGetValue(name, out var values) ? values.LastOrDefault() : null;
    }

    /// <summary>The same stop's address at the place on the page that shows an item.</summary>
    public string HrefTo(PathId item) => $"{(this with { At = item }).Href}#{item}";

    public string Path => Stop == Stop.Quilt ? $"/quilts/{Slug}" : $"/quilts/{Slug}/{StopName}";

    public string StopName => Stop.ToString().ToLowerInvariant();

    public string Href
    {
        get
        {
            List<string> query = [];
            Add("colorway", Colorway);
            Add("at", At.Value);
            Add("try", Try);
            Add("kits", Kits);
            return query.Count == 0 ? Path : $"{Path}?{string.Join('&', query)}";

            void Add(string name, string? value)
            {
                if (!string.IsNullOrEmpty(value))
                {
                    // These may stand in a query (RFC 3986, 3.4) and keep it readable.
                    var text = Uri.EscapeDataString(value).Replace("%2F", "/").Replace("%3A", ":").Replace("%2C", ",");
                    query.Add($"{name}={text}");
                }
            }
        }
    }
}
