using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>Whether the pieces of a role all show the same part of the print, as decisions of the quilt.</summary>
public static class MatchDecisions
{
    private const string Yes = "yes";
    private const string No = "no";

    public static string NameOf(Role role) => $"match.{role.Id}";

    public static IEnumerable<Decision> Of(Quilt quilt) =>
        quilt
            .Roles.Where(role => role.Id != quilt.Binding.Role && role.Id != quilt.Backing.Role)
            .Select(role => new Decision(
                NameOf(role),
                "match",
                quilt.Roles.IndexOf(role) + 1,
                role.Matched ? Yes : No,
                [new(No, Saying.Say("web.match.no")), new(Yes, Saying.Say("web.match.yes"))],
                text => text is Yes or No ? With(quilt, role, text == Yes) : null
            ));

    public static Quilt With(Quilt quilt, Role role, bool matched) => quilt with { Roles = quilt.Roles.Replace(role, role with { Matched = matched }) };
}
