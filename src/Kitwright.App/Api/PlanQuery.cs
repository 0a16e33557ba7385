using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>The choices of a plan in a request's query, named as the command's options; the shop's terms where they are silent.</summary>
internal sealed record PlanQuery(
    [property: FromQuery(Name = "colorway")] string? Colorway,
    [property: FromQuery(Name = "width")] string? Width,
    [property: FromQuery(Name = "spare")] string? Spare,
    [property: FromQuery(Name = "by-the-inch")] string? ByTheInch,
    [property: FromQuery(Name = "length-per-fabric")] string? LengthPerFabric,
    [property: FromQuery(Name = "budget")] string? Budget
)
{
    private static readonly ImmutableArray<string> Budgets = ["while-you-type", "normal", "thorough"];

    private static readonly Length WidestCloth = Length.Inches(200);

    public Checked<PlanOptions> Options(PlanOptions shop)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (Width is not null)
        {
            if (LengthText.TryParse(Width, out var width) && width > Length.Inch && width <= WidestCloth)
            {
                shop = shop with { Terms = shop.Terms with { UsableWidth = width } };
            }
            else
            {
                Bad("width", Width, "1–200 in");
            }
        }

        if (Spare is not null)
        {
            if (int.TryParse(Spare, NumberStyles.None, CultureInfo.InvariantCulture, out var spare) && spare <= 100)
            {
                shop = shop with { SpareStrips = spare };
            }
            else
            {
                Bad("spare", Spare, "0–100");
            }
        }

        shop = shop with
        {
            Goal = Flag("by-the-inch", ByTheInch) ? CutGoal.ByTheInch : shop.Goal,
            OneLengthPerFabric = Flag("length-per-fabric", LengthPerFabric) || shop.OneLengthPerFabric,
        };
        if (Budget is not null)
        {
            shop = shop with { Budget = Budget };
            if (!Budgets.Contains(Budget))
            {
                Bad("budget", Budget, string.Join(", ", Budgets));
            }
        }

        return findings.Count > 0 ? Checked<PlanOptions>.Failed(findings.ToImmutable()) : Checked<PlanOptions>.Of(shop);

        bool Flag(string name, string? text)
        {
            if (text is null or "false")
            {
                return false;
            }

            if (text is not ("true" or ""))
            {
                Bad(name, text, "true, false");
            }

            return true;
        }

        void Bad(string name, string text, string wanted) =>
            findings.Add(Finding.Of("api.query", $"query/{name}", ("name", name), ("text", text), ("wanted", wanted)));
    }
}
