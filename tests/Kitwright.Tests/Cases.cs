using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests;

/// <summary>Published facts under data/cases, and their numbers as ours.</summary>
internal static class Cases
{
    public static JsonElement Open(string name) =>
        JsonDocument.Parse(Repository.Read("data", "cases", name, "case.json")).RootElement;

    /// <summary>A length by its name, in inches unless it says otherwise.</summary>
    public static Length Length(this JsonElement element, string name)
    {
        Assert.True(LengthText.TryParse(element.Text(name), out var length));
        return length;
    }

    public static Rational Number(this JsonElement element, string name)
    {
        Assert.True(RationalText.TryParse(element.Text(name), out var number));
        return number;
    }

    public static Surd Exact(this JsonElement element, string name)
    {
        Assert.True(SurdText.TryParse(element.Text(name), out var number));
        return number;
    }

    public static bool Has(this JsonElement element, string name) => element.TryGetProperty(name, out _);

    private static string? Text(this JsonElement element, string name) => element.GetProperty(name).GetString();
}
