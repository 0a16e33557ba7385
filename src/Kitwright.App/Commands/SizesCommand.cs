using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.App.Planning;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Sizes;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.App.Commands;

/// <summary><c>sizes QUILT --target WxH</c>: the best ways to bring a quilt to a size, with the cloth that each takes.</summary>
internal static class SizesCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var colorway = Inputs.Colorway();
        var stock = Inputs.Stock();
        var json = Inputs.Json();
        var wanted = new TargetOptions();
        var command = new Command("sizes", Inputs.Say("command.sizes")) { quilt, colorway, stock, json };
        wanted.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var read = Inputs.ReadQuilt(parsed.GetValue(quilt)!);
                var shelf = Inputs.ReadStock(parsed.GetValue(stock));
                var targets = wanted.Read(parsed);
                ImmutableArray<Finding> findings = [.. read.Findings, .. shelf.Findings, .. targets.Findings];
                ImmutableArray<PlannedSize> ways = [];
                if (read.Value is { } found && shelf.Value is { } cloths && targets.Value is { Sizes: [var first, .. var others] })
                {
                    var (chosen, unknown) = Inputs.Find(found, parsed.GetValue(colorway));
                    var target = new SizeTarget(first.Width, first.Height, wanted.DrawUp(parsed));
                    var options = Standing.OptionsFor(found) with { Budget = "while-you-type" };
                    var sizes = SizePlanning.Of(
                        found,
                        target,
                        q => PlanningLine.Plan(q, chosen, cloths.Fabrics, options, Cutters.Named(options.Budget, cancel)).Plan
                    );
                    findings = [.. findings, .. unknown, .. others.Select(other => Other(first, other)), .. sizes.Findings];
                    ways = unknown.IsEmpty && sizes.Value is { } planned ? planned.Ways : [];
                }

                Tell(output, parsed.GetValue(json), ways, findings, Inputs.Language(parsed, read.Value));
                return Task.FromResult(Report.ExitFor(findings));
            }
        );
        return command;
    }

    private static Finding Other(NamedTarget first, NamedTarget other) =>
        Finding.NoteOf(
            "sizes.reading",
            "target",
            ("usual", Published(first)),
            ("other", Published(other)),
            ("width", other.Width),
            ("height", other.Height)
        );

    private static Message Published(NamedTarget target) => Message.Of("web.size", ("width", target.Reading!.Width), ("height", target.Reading.Height));

    private static void Tell(TextWriter output, bool json, ImmutableArray<PlannedSize> ways, ImmutableArray<Finding> findings, Catalog words)
    {
        if (json)
        {
            Report.WriteJson(output, new { ways = ways.Select(Line), findings = Report.Json(findings) });
            return;
        }

        Report.Write(output, findings, words);
        foreach (var (i, way) in ways.Index())
        {
            output.WriteLine(words.Say("sizes.line", ("number", i + 1), ("way", SizeWords.Way(way.Way)), ("size", SizeWords.Size(way.Way))));
            output.WriteLine(
                way is { Cloth: { } cloth, Seconds: { } seconds }
                    ? words.Say("sizes.cloth", ("length", cloth), ("time", Duration.Say(seconds)))
                    : words.Say("sizes.no-plan")
            );
        }
    }

    /// <summary>One way as JSON.</summary>
    public static object Line(PlannedSize way) =>
        new
        {
            way.Way.Choice.Columns,
            way.Way.Choice.Rows,
            way.Way.Choice.Block,
            sashing = way.Way.Choice.Sash,
            way.Way.Choice.Borders,
            way.Way.Width,
            way.Way.Height,
            way.Way.OverWidth,
            way.Way.OverHeight,
            way.Cloth,
            minutes = way.Seconds is { } seconds ? Duration.Minutes(seconds) : (int?)null,
        };
}

/// <summary>The options that name a size.</summary>
internal sealed class TargetOptions
{
    private readonly Option<string?> target = new("--target") { Description = Inputs.Say("command.sizes.target") };
    private readonly Option<string?> bed = new("--bed") { Description = Inputs.Say("command.sizes.bed") };
    private readonly Option<string?> batting = new("--batting") { Description = Inputs.Say("command.sizes.batting") };
    private readonly Option<string> drop = Measured("--drop", "command.sizes.drop", "12");
    private readonly Option<string> tuck = Measured("--tuck", "command.sizes.tuck", "0");
    private readonly Option<string> overhang = Measured("--overhang", "command.sizes.overhang", "4");
    private readonly Option<int> drawUp = new("--draw-up") { Description = Inputs.Say("command.sizes.draw-up") };

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { target, bed, batting, drop, tuck, overhang, drawUp })
        {
            command.Add(option);
        }

        drawUp.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is < 0 or > 10)
            {
                r.AddError(Inputs.Say("command.sizes.draw-up.bad"));
            }
        });
        command.Validators.Add(r =>
        {
            if (new[] { r.GetValue(target), r.GetValue(bed), r.GetValue(batting) }.Count(named => named is not null) != 1)
            {
                r.AddError(Inputs.Say("command.sizes.one"));
            }
        });
    }

    public Rational DrawUp(ParseResult parsed) => new(parsed.GetValue(drawUp), 100);

    public Checked<NamedTargets> Read(ParseResult parsed) =>
        (parsed.GetValue(bed), parsed.GetValue(batting)) switch
        {
            ({ } name, _) => TargetNames.Bed(name, Value(parsed, drop), Value(parsed, tuck)),
            (_, { } name) => TargetNames.Batting(name, Value(parsed, overhang)),
            _ => TargetNames.Numbers(parsed.GetValue(target)!),
        };

    private static Option<string> Measured(string name, string description, string usual)
    {
        var option = new Option<string>(name) { Description = Inputs.Say(description), DefaultValueFactory = _ => usual };
        option.Validators.Add(r =>
        {
            if (!LengthText.TryParse(r.GetValueOrDefault<string>(), out var length) || length.Sign < 0 || length > Length.Inches(40))
            {
                r.AddError(Inputs.Say("command.sizes.measure.bad", ("option", name)));
            }
        });
        return option;
    }

    private static Length Value(ParseResult parsed, Option<string> option) =>
        LengthText.TryParse(parsed.GetValue(option), out var length) ? length : Length.Zero;
}
