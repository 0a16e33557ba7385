using Kitwright.Plans;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.Print.Pages;

/// <summary>What all pages of a booklet draw from.</summary>
/// <param name="Language">Words and units.</param>
/// <param name="Width">Of the text, in points.</param>
/// <param name="Height">Of the text, in points.</param>
internal sealed record BookletSource(Quilt Quilt, QuiltPlan Plan, FabricFills Fills, Catalog Language, double Width, double Height)
{
    /// <summary>Whose times and hand the directions are for.</summary>
    public Sewist Sewist { get; init; } = Sewist.Usual;

    /// <summary>Quilt and colorway.</summary>
    public string Title => Plan.Colorway is { } colorway ? Say("print.title", ("quilt", Plan.Quilt), ("colorway", colorway)) : Plan.Quilt;

    public string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) => Language.Say(key, slots);

    public string Say(Message message) => Language.Say(message);

    /// <summary>The names of roles, for people: "background and border".</summary>
    public string RoleNames(IEnumerable<string> roles) =>
        Say(
            "print.roles",
            ("roles", (System.Collections.Immutable.ImmutableArray<Message>)[.. roles.Select(role => Message.Plain(NameOf(role)))])
        );

    private string NameOf(string role) => Quilt.Roles.FirstOrDefault(r => r.Id == role)?.Name ?? role;
}
