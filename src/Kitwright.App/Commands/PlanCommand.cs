using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits.Forms;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Pressing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Commands;

/// <summary><c>plan QUILT</c>: cut list, cutting plan and needs, checked.</summary>
internal static class PlanCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var options = new PlanningOptions();
        var json = Inputs.Json();
        var why = new Option<bool>("--why") { Description = Inputs.Say("command.why") };
        var form = new Option<KitForm?>("--form") { Description = Inputs.Say("command.form"), CustomParser = BagText.FormOf };
        var command = new Command("plan", Inputs.Say("command.plan")) { quilt, json, why, form };
        options.AddTo(command);
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var planned = options.Plan(parsed, parsed.GetValue(quilt)!, cancel);
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(
                        output,
                        new
                        {
                            format = QuiltPlan.Format,
                            version = QuiltPlan.Version,
                            plan = planned.Plan,
                            trace = planned.Plan is null ? null : planned.Trace,
                            leftovers = planned.Plan is null ? [] : Leftovers.Of(planned.Plan),
                            findings = Report.Json(planned.Findings),
                        }
                    );
                }
                else
                {
                    Report.Write(output, planned.Findings, planned.Language);
                    if (planned.Plan is { } plan)
                    {
                        PlanText.Write(output, plan, planned.Language, parsed.GetValue(why));
                        if (parsed.GetValue(form) is { } chosen)
                        {
                            BagText.Write(output, KitBag.Of(plan, chosen), planned.Language);
                        }

                        TechniqueText.Write(output, options.Compare(parsed, parsed.GetValue(quilt)!), planned.Language);
                    }
                }

                return Task.FromResult(planned.Plan is null ? ExitCode.Findings : Report.ExitFor(planned.Findings));
            }
        );
        return command;
    }
}

/// <summary>The options that make a plan, shared by the verbs that need one.</summary>
internal sealed class PlanningOptions
{
    private readonly Option<string?> stock = Inputs.Stock();
    private readonly Option<string?> colorway = Inputs.Colorway();
    private readonly Option<string?> width = new("--width") { Description = Inputs.Say("command.width") };
    private readonly Option<int> spare = new("--spare")
    {
        Description = Inputs.Say("command.spare"),
        DefaultValueFactory = _ => PlanOptions.Usual.SpareStrips,
    };
    private readonly Option<string[]> techniques = new("--technique") { Description = Inputs.Say("command.technique") };
    private readonly Option<string[]> press = new("--press") { Description = Inputs.Say("command.press") };
    private readonly Option<string[]> match = new("--match") { Description = Inputs.Say("command.match") };
    private readonly Option<string[]> sparePieces = new("--spare-pieces") { Description = Inputs.Say("command.spare-pieces") };
    private readonly Option<bool> byInch = new("--by-the-inch") { Description = Inputs.Say("command.by-inch") };
    private readonly Option<bool> perFabric = new("--length-per-fabric") { Description = Inputs.Say("command.per-fabric") };
    private readonly Option<string> budget = new("--budget")
    {
        Description = Inputs.Say("command.budget"),
        DefaultValueFactory = _ => "normal",
    };

    public void AddTo(Command command)
    {
        budget.AcceptOnlyFromAmong("while-you-type", "normal", "thorough");
        spare.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is < 0 or > 100)
            {
                r.AddError(Inputs.Say("command.spare.bad"));
            }
        });
        width.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<string?>() is { } text && !(LengthText.TryParse(text, out var w) && w > Length.Inch && w <= Length.Inches(200)))
            {
                r.AddError(Inputs.Say("command.width.bad"));
            }
        });
        techniques.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<string[]>()?.FirstOrDefault(text => Chosen(text) is null) is { } bad)
            {
                r.AddError(Inputs.Say("command.technique.bad", ("technique", bad)));
            }
        });
        press.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<string[]>()?.FirstOrDefault(text => Pressed(text) is null) is { } bad)
            {
                r.AddError(Inputs.Say("command.press.bad", ("habit", bad)));
            }
        });
        foreach (var option in new Option[] { stock, colorway, width, spare, byInch, perFabric, techniques, press, match, sparePieces, budget })
        {
            command.Add(option);
        }
    }

    public PlanOptions Read(ParseResult parsed, Quilt quilt)
    {
        var terms = Standing.OptionsFor(quilt).Terms;
        if (LengthText.TryParse(parsed.GetValue(width), out var usable))
        {
            terms = terms with { UsableWidth = usable };
        }

        return new(
            terms,
            parsed.GetValue(spare),
            parsed.GetValue(byInch) ? CutGoal.ByTheInch : CutGoal.ByTheStep,
            parsed.GetValue(perFabric),
            parsed.GetValue(budget)!
        )
        {
            Techniques = (parsed.GetValue(techniques) ?? []).Select(Chosen).OfType<KeyValuePair<string, string>>().ToImmutableSortedDictionary(StringComparer.Ordinal),
            Pressing = (parsed.GetValue(press) ?? []).Select(Pressed).OfType<KeyValuePair<string, string>>().ToImmutableSortedDictionary(StringComparer.Ordinal) is { IsEmpty: false } habits ? habits : null,
        };
    }

    /// <summary>"half-square=eight"; null where there is no such kind or technique.</summary>
    private static KeyValuePair<string, string>? Chosen(string text) =>
        text.Split('=') is [var kind, var technique] && TechniqueBook.Kind(kind)?.Has(technique) == true ? new(kind, technique) : null;

    /// <summary>"logs=center"; null where there is no such habit or way.</summary>
    private static KeyValuePair<string, string>? Pressed(string text) =>
        text.Split('=') is [var habit, var way] && PressingBook.Choice(habit)?.Has(way) == true ? new(habit, way) : null;

    /// <summary>What the ways of making the units come to, for a quilt that was planned.</summary>
    public ImmutableArray<UnitTechniques> Compare(ParseResult parsed, string quiltPath)
    {
        if (Spared(Matched(Inputs.ReadQuilt(quiltPath), parsed.GetValue(match) ?? []), parsed.GetValue(sparePieces) ?? []).Value is not { } quilt)
        {
            return [];
        }

        var (chosen, _) = Inputs.Find(quilt, parsed.GetValue(colorway));
        return TechniqueComparison.Of(quilt, chosen, Inputs.ReadStock(parsed.GetValue(stock)).Value?.Fabrics ?? [], Read(parsed, quilt), FirstFit.Plan);
    }

    public PlannedQuilt Plan(ParseResult parsed, string quiltPath, CancellationToken cancel) => PlanOf(parsed, quiltPath, cancel).Planned;

    /// <summary>The plan with what it was made from; null where that could not be read.</summary>
    public (PlannedQuilt Planned, Quilt? Quilt, Shelf? Shelf) PlanOf(ParseResult parsed, string quiltPath, CancellationToken cancel)
    {
        var quilt = Spared(Matched(Inputs.ReadQuilt(quiltPath), parsed.GetValue(match) ?? []), parsed.GetValue(sparePieces) ?? []);
        var shelf = Inputs.ReadStock(parsed.GetValue(stock));
        var language = Inputs.Language(parsed, quilt.Value);
        if (quilt.Value is null || shelf.Value is null)
        {
            return (new PlannedQuilt(null, Trace.None, [.. quilt.Findings, .. shelf.Findings]) with { Language = language }, quilt.Value, shelf.Value);
        }

        var (chosen, findings) = Inputs.Find(quilt.Value, parsed.GetValue(colorway));
        if (findings.Length > 0)
        {
            return (new PlannedQuilt(null, Trace.None, findings) with { Language = language }, quilt.Value, shelf.Value);
        }

        var options = Read(parsed, quilt.Value);
        var planned = PlanningLine.Plan(
            quilt.Value,
            chosen,
            shelf.Value.Fabrics,
            options,
            Cutters.Named(options.Budget, cancel)
        );
        return (planned with { Language = language, Findings = [.. quilt.Findings, .. shelf.Findings, .. planned.Findings] }, quilt.Value, shelf.Value);
    }

    /// <summary>The quilt with the roles matched that are asked for; a finding where it has no such role.</summary>
    private static Checked<Quilt> Matched(Checked<Quilt> read, string[] roles)
    {
        if (read.Value is not { } quilt || roles.Length == 0)
        {
            return read;
        }

        var unknown = roles
            .Where(id => quilt.Roles.All(role => role.Id != id))
            .Select(id => Finding.Of("command.match.unknown", "--match", ("role", id), ("roles", string.Join(", ", quilt.Roles.Select(role => role.Id)))))
            .ToImmutableArray();
        return unknown.IsEmpty
            ? read with { Value = quilt with { Roles = [.. quilt.Roles.Select(role => roles.Contains(role.Id) ? role with { Matched = true } : role)] } }
            : Checked<Quilt>.Failed(unknown);
    }

    /// <summary>The quilt with spare pieces of the roles that are named; a finding where it has no such role or number.</summary>
    /// <param name="spares">ROLE=N.</param>
    private static Checked<Quilt> Spared(Checked<Quilt> read, string[] spares)
    {
        foreach (var text in spares)
        {
            if (read.Value is not { } quilt)
            {
                break;
            }

            var parts = text.Split('=', 2);
            var role = quilt.Roles.FirstOrDefault(role => role.Id == parts[0]);
            read = role is not null && parts.Length == 2 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var spare) && spare <= QuiltLimits.SparePieces
                ? read with { Value = quilt with { Roles = quilt.Roles.Replace(role, role with { Spare = spare }) } }
                : Checked<Quilt>.Failed(Finding.Of("command.spare-pieces.bad", "--spare-pieces", ("text", text), ("most", QuiltLimits.SparePieces), ("roles", string.Join(", ", quilt.Roles.Select(role => role.Id)))));
        }

        return read;
    }
}
