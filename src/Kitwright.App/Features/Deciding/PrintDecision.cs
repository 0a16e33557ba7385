using Kitwright.App.Web;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>Where prints that have an up stand upright, as a decision of the quilt; kept in its file as <c>prints</c>.</summary>
public static class PrintDecision
{
    public const string Name = "prints";

    public static Decision Of(Quilt quilt) =>
        new(
            Name,
            Name,
            0,
            Text(quilt.Prints),
            [.. Enum.GetValues<PrintSetting>().Select(setting => new Choice(Text(setting), Saying.Say($"web.prints.{Text(setting)}")))],
            text => Enum.GetValues<PrintSetting>().Where(setting => Text(setting) == text).Select(setting => quilt with { Prints = setting }).FirstOrDefault()
        );

    private static string Text(PrintSetting setting) => setting.ToString().ToLowerInvariant();
}
