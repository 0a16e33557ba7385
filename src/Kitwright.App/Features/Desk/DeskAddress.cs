using Kitwright.Plans;

namespace Kitwright.App.Features.Desk;

/// <summary>
/// What a page shows, as its address: nothing that a person chose lives anywhere else, so a page can be reloaded, sent
/// on and gone back from.
/// </summary>
/// <param name="Slug">The quilt.</param>
/// <param name="Colorway">Name of the colorway; null for the quilt's first.</param>
/// <param name="At">What is touched; the empty path for nothing.</param>
/// <param name="Try">Changes that are tried and not kept.</param>
public sealed record DeskAddress(string Slug, Stop Stop, string? Colorway, PathId At, string? Try)
{
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
            return query.Count == 0 ? Path : $"{Path}?{string.Join('&', query)}";

            void Add(string name, string? value)
            {
                if (!string.IsNullOrEmpty(value))
                {
                    // Slashes and colons may stand in a query (RFC 3986, 3.4) and keep it readable.
                    query.Add($"{name}={Uri.EscapeDataString(value).Replace("%2F", "/").Replace("%3A", ":")}");
                }
            }
        }
    }
}
