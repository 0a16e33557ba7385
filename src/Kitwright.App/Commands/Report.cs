using System.Collections.Immutable;
using System.Text.Json;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>Findings on paper: one line each in text, or a JSON document; and the exit code that goes with them.</summary>
internal static class Report
{
    public static int ExitFor(IEnumerable<Finding> findings) =>
        findings.Any(f => f.Weight == Weight.Fault) ? ExitCode.Findings : ExitCode.Good;

    public static void Write(TextWriter output, ImmutableArray<Finding> findings, Catalog words)
    {
        foreach (var finding in findings)
        {
            output.WriteLine(
                words.Say(
                    finding.Weight == Weight.Fault ? "command.finding" : "command.note",
                    ("place", finding.Place),
                    ("reason", finding.Reason),
                    ("remedy", finding.Remedy)
                )
            );
            if (finding.Measured is { } measured && finding.Expected is { } expected)
            {
                output.WriteLine(words.Say("command.measured", ("measured", measured), ("expected", expected)));
            }
        }
    }

    /// <summary>Findings as data with their words: rule, place, weight, reason, remedy, measured, expected.</summary>
    public static ImmutableArray<FindingJson> Json(ImmutableArray<Finding> findings) =>
        [.. findings.Select(FindingJson.Of)];

    public static void WriteJson(TextWriter output, object document) =>
        output.WriteLine(JsonSerializer.Serialize(document, PlanJson.Indented));
}

/// <summary>A finding as <c>--json</c> prints it.</summary>
internal sealed record FindingJson(
    string Rule,
    string Place,
    string Weight,
    string Reason,
    string Remedy,
    string? Measured,
    string? Expected
)
{
    public static FindingJson Of(Finding finding)
    {
        var words = Catalog.English;
        return new(
            finding.Rule,
            finding.Place,
            finding.Weight == Findings.Weight.Fault ? "fault" : "note",
            words.Say(finding.Reason),
            words.Say(finding.Remedy),
            finding.Measured is null ? null : words.Say(finding.Measured),
            finding.Expected is null ? null : words.Say(finding.Expected)
        );
    }
}
