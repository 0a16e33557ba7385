using Kitwright.App.Commands;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Sizes;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>Ways to bring a quilt to a size, with the cloth that each takes.</summary>
internal static class SizesVerb
{
    private const string Budget = "while-you-type";

    public static IResult Answer(Checked<Quilt> quilt, SizesQuery query, IWorkbench workbench, CancellationToken cancel)
    {
        var targets = query.Targets();
        if (quilt.Value is not { } found || targets.Value is not { Sizes: [var first, ..] })
        {
            return ApiAnswer.Refused([.. quilt.Findings, .. targets.Findings]);
        }

        var (colorway, unknown) = Inputs.Find(found, query.Colorway);
        if (unknown.Length > 0)
        {
            return ApiAnswer.Refused(unknown);
        }

        var options = Standing.OptionsUnder(workbench.Terms) with { Budget = Budget };
        var sizes = SizePlanning.Of(
            found,
            new SizeTarget(first.Width, first.Height, Rational.Zero),
            q => PlanningLine.Plan(q, colorway, workbench.Shelf.Fabrics, options, Cutters.Named(Budget, cancel)).Plan
        );
        return sizes.Value is { } planned
            ? ApiAnswer.Json(new { ways = planned.Ways.Select(SizesCommand.Line), findings = Report.Json(sizes.Findings) })
            : ApiAnswer.Refused(sizes.Findings);
    }
}

/// <summary>One of target, bed and batting says what size is wanted.</summary>
/// <param name="Target">Width by height: 60x80.</param>
/// <param name="Bed">The name of a bed, with the usual drop.</param>
/// <param name="Batting">The name of a packaged batting.</param>
internal sealed record SizesQuery(
    [property: FromQuery(Name = "target")] string? Target,
    [property: FromQuery(Name = "bed")] string? Bed,
    [property: FromQuery(Name = "batting")] string? Batting,
    [property: FromQuery(Name = "colorway")] string? Colorway
)
{
    // The drop of a bed's cover and the overhang of a batting that the command takes where nothing is said.
    private static readonly Length Drop = Length.Inches(12);
    private static readonly Length Overhang = Length.Inches(4);

    public Checked<NamedTargets> Targets() =>
        (Bed, Batting) switch
        {
            ({ } name, _) => TargetNames.Bed(name, Drop, Length.Zero),
            (_, { } name) => TargetNames.Batting(name, Overhang),
            _ => TargetNames.Numbers(Target ?? ""),
        };
}
