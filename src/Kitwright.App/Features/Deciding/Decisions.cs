using System.Collections.Immutable;
using Kitwright.App.Features.QuiltSettings;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;

namespace Kitwright.App.Features.Deciding;

/// <summary>The decisions of a quilt that a page offers.</summary>
public static class Decisions
{
    /// <summary>Those of the quilt itself, in the order of its sentences.</summary>
    public static ImmutableArray<Decision> Of(Quilt quilt)
    {
        var setting = quilt.Setting;
        var ruler = new Ruler(quilt.Units);
        var decisions = ImmutableArray.CreateBuilder<Decision>();
        decisions.Add(Decision.Count("columns", setting.Columns, n => SettingChanges.Counted(quilt, n, setting.Rows)));
        decisions.Add(Decision.Count("rows", setting.Rows, n => SettingChanges.Counted(quilt, setting.Columns, n)));
        if (setting.Sashing is { } sashing)
        {
            decisions.Add(
                Decision.Width(
                    ruler,
                    "sashing",
                    0,
                    sashing.Width,
                    ruler.Fine,
                    ruler.Reach(6),
                    width => quilt with { Setting = setting with { Sashing = sashing with { Width = width } } }
                )
            );
        }

        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            var (at, border) = (i, quilt.Borders[i]);
            decisions.Add(
                Decision.Width(
                    ruler,
                    "border",
                    i + 1,
                    border.Width,
                    ruler.Fine * 2,
                    ruler.Reach(12),
                    width => quilt with { Borders = quilt.Borders.SetItem(at, border with { Width = width }) }
                )
            );
        }

        decisions.Add(
            Decision.Width(
                ruler,
                "binding",
                0,
                quilt.Binding.StripWidth,
                ruler.Fine,
                ruler.Reach(4),
                width => quilt with { Binding = quilt.Binding with { StripWidth = width } }
            )
        );
        decisions.Add(
            Decision.Width(
                ruler,
                "overhang",
                0,
                quilt.Backing.Overhang,
                ruler.Coarse,
                ruler.Reach(8),
                width => quilt with { Backing = quilt.Backing with { Overhang = width } }
            )
        );
        decisions.AddRange(SettingDecisions.Of(quilt));
        decisions.AddRange(TechniqueDecisions.Of(quilt));
        decisions.AddRange(PressingDecisions.Of(quilt));
        decisions.Add(PrintDecision.Of(quilt));
        decisions.AddRange(MatchDecisions.Of(quilt));
        decisions.AddRange(SpareDecisions.Of(quilt));
        return decisions.ToImmutable();
    }

    /// <summary>Which fabric of the shelf fills each role of a colorway.</summary>
    public static ImmutableArray<Decision> Of(Quilt quilt, Colorway colorway, Shelf shelf)
    {
        ImmutableArray<Choice> choices =
        [
            .. shelf.Fabrics.OrderBy(f => f.Number, StringComparer.Ordinal).Select(f => new Choice(f.Number, $"{f.Name}, {f.Number}")),
        ];
        return
        [
            .. quilt.Roles.Select(
                (role, i) =>
                    new Decision(
                        $"fabric.{role.Id}",
                        "fabric",
                        i + 1,
                        colorway.Fabrics.GetValueOrDefault(role.Id, ""),
                        choices,
                        number => shelf.Fabric(number) is null ? null : Refilled(role.Id, number)
                    )
            ),
        ];

        Quilt Refilled(string role, string number) =>
            quilt with
            {
                Colorways =
                [
                    .. quilt.Colorways.Select(c =>
                        c.Name == colorway.Name ? c with { Fabrics = c.Fabrics.SetItem(role, number) } : c
                    ),
                ],
            };
    }
}
