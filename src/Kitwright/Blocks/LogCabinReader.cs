using Kitwright.Measure;
using Kitwright.Quilts.Reading;

namespace Kitwright.Blocks;

/// <summary>Reads the parameters of the log-cabin family; null where one of them is at fault.</summary>
internal static class LogCabinReader
{
    private const int MostRounds = 20;
    private const int MostUnits = 40;

    public static LogCabinPlan? Read(Node node)
    {
        using var fields = node.Fields();
        var light = Units(fields.Required("light"));
        var rounds = fields.Required("rounds").Whole(1, MostRounds);
        var plan = new LogCabinPlan(
            fields.Optional("lay")?.OneOf<LogLay>() ?? LogLay.Round,
            Units(fields.Required("center")),
            light,
            fields.Optional("dark") is { } dark ? Units(dark) : light,
            rounds,
            fields.Optional("start")?.OneOf<LogSide>() ?? LogSide.Right,
            fields.Optional("clockwise")?.Flag() ?? false,
            fields.Optional("tones")?.Whole(1, rounds) ?? 1,
            fields.Optional("cornerstones")?.Flag() ?? false,
            [.. fields.Optional("units")?.Items(0, MostUnits).Select(n => ReadUnit(n, rounds)) ?? []]
        );
        return node.Source.Report.HasFault ? null : plan;
    }

    public static PineapplePlan? ReadPineapple(Node node)
    {
        using var fields = node.Fields();
        var plan = new PineapplePlan(
            Units(fields.Required("center")),
            Units(fields.Required("strip")),
            fields.Required("rounds").Whole(1, MostRounds)
        );
        return node.Source.Report.HasFault ? null : plan;
    }

    // Sizes are numbers of units: read as bare lengths, which are inches here.
    private static Rational Units(Node node) => node.Size().InInches;

    private static LogUnit ReadUnit(Node node, int rounds)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("round").Whole(1, rounds),
            fields.Required("side").OneOf<LogSide>(),
            fields.Required("at").OneOf<LogPlace>(),
            fields.Required("kind").OneOf<LogUnitKind>()
        );
    }
}
