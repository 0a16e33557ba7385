using System.Globalization;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>How many more of each size a role has cut, for a piece that goes wrong, as decisions of the quilt.</summary>
public static class SpareDecisions
{
    private const int MostOffered = 12;

    public static string NameOf(Role role) => $"spare.{role.Id}";

    public static IEnumerable<Decision> Of(Quilt quilt) =>
        quilt
            .Roles.Where(role => role.Id != quilt.Backing.Role)
            .Select(role => new Decision(
                NameOf(role),
                "spare",
                quilt.Roles.IndexOf(role) + 1,
                Text(role.Spare),
                [.. Enumerable.Range(0, MostOffered + 1).Append(role.Spare).Distinct().Order().Select(n => new Choice(Text(n), Text(n)))],
                text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n <= QuiltLimits.SparePieces ? With(quilt, role, n) : null
            ));

    private static Quilt With(Quilt quilt, Role role, int spare) => quilt with { Roles = quilt.Roles.Replace(role, role with { Spare = spare }) };

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
