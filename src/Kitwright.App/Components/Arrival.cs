namespace Kitwright.App.Components;

/// <summary>The path of the page that a visitor saw last, for as long as the connection holds.</summary>
public sealed class Arrival
{
    private string? last;

    /// <summary>True where the visitor came from another page of the app, and not by loading this one.</summary>
    public bool At(string path)
    {
        var arrived = last is not null && last != path;
        last = path;
        return arrived;
    }
}
