using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;

namespace Kitwright.App.Commands;

/// <summary>The options of <c>cut</c>. Every allowance is 0 unless given.</summary>
internal sealed class CutOptions
{
    private const double MostSeconds = 86_400;
    private const long MostSteps = 1_000_000_000_000;

    /// <summary>What one whole number stands for where --unit has no value: any length gives the same plan.</summary>
    private static readonly Length AnyUnit = Length.Inches(new(1, 64));

    private readonly Option<string> width = new("--width") { Description = Inputs.Say("command.cut.width"), Required = true };
    private readonly Option<string?> unit = new("--unit")
    {
        Description = Inputs.Say("command.cut.unit"),
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<bool> turn = new("--turn") { Description = Inputs.Say("command.cut.turn") };
    private readonly Option<string?> trim = new("--trim") { Description = Inputs.Say("command.cut.trim") };
    private readonly Option<string?> straightening = new("--straightening") { Description = Inputs.Say("command.cut.straightening") };
    private readonly Option<string[]> increments = new("--increment") { Description = Inputs.Say("command.cut.increment") };
    private readonly Option<string?> goal = new("--goal") { Description = Inputs.Say("command.cut.goal") };
    private readonly Option<string> budget = new("--budget")
    {
        Description = Inputs.Say("command.budget"),
        DefaultValueFactory = _ => "normal",
    };
    private readonly Option<long?> work = new("--work") { Description = Inputs.Say("command.cut.work") };
    private readonly Option<double?> seconds = new("--seconds") { Description = Inputs.Say("command.cut.seconds") };

    public void AddTo(Command command)
    {
        goal.AcceptOnlyFromAmong("length", "purchase");
        budget.AcceptOnlyFromAmong("while-you-type", "normal", "thorough");
        foreach (var option in new Option[] { width, unit, turn, trim, straightening, increments, goal, budget, work, seconds })
        {
            command.Add(option);
        }

        command.Validators.Add(Validate);
    }

    public RollTerms Read(ParseResult parsed)
    {
        var measure = Measure(parsed.GetResult(unit));
        Length Of(string? text) => text is not null && measure.TryRead(text, out var length) ? length : Length.Zero;
        var steps = parsed.GetValue(increments) ?? [];
        return new(
            measure,
            parsed.GetValue(turn),
            Of(parsed.GetValue(width)),
            Of(parsed.GetValue(trim)),
            Of(parsed.GetValue(straightening)),
            [.. steps.Select(Of)],
            parsed.GetValue(goal) is not "length",
            Budget(parsed)
        );
    }

    private WorkBudget Budget(ParseResult parsed) =>
        (parsed.GetValue(work), parsed.GetValue(seconds)) switch
        {
            (_, { } limit) => new("seconds", (long)(limit * 1_000_000_000), TimeSpan.FromSeconds(limit)),
            ({ } limit, _) => new("work", limit, TimeSpan.FromSeconds(MostSeconds)),
            _ => parsed.GetValue(budget) switch
            {
                "while-you-type" => WorkBudget.WhileYouType,
                "thorough" => WorkBudget.Thorough,
                _ => WorkBudget.Normal,
            },
        };

    private ListMeasure Measure(OptionResult? given) =>
        given is null ? ListMeasure.Inches
        : given.GetValueOrDefault<string?>() is { } text && LengthText.TryParse(text, out var length) ? new(length)
        : new(AnyUnit);

    private void Validate(CommandResult result)
    {
        if (result.GetResult(unit)?.GetValueOrDefault<string?>() is { } text && !(LengthText.TryParse(text, out var length) && length.Sign > 0))
        {
            result.AddError(Inputs.Say("command.cut.unit.bad"));
            return;
        }

        var measure = Measure(result.GetResult(unit));
        void Check(Option option, string? given, bool aboveZero)
        {
            if (given is not null && !(measure.TryRead(given, out var read) && (read.Sign > 0 || (read.IsZero && !aboveZero))))
            {
                result.AddError(Words.Catalog.English.Say("command.cut.measure.bad", ("option", option.Name)));
            }
        }

        Check(width, result.GetValue(width), aboveZero: true);
        Check(trim, result.GetValue(trim), aboveZero: false);
        Check(straightening, result.GetValue(straightening), aboveZero: false);
        var steps = result.GetValue(increments) ?? [];
        foreach (var step in steps)
        {
            Check(increments, step, aboveZero: true);
        }

        if (result.GetValue(goal) == "purchase" && steps.Length == 0)
        {
            result.AddError(Inputs.Say("command.cut.goal.purchase"));
        }

        if (result.GetValue(seconds) is not (null or (> 0 and <= MostSeconds)) || result.GetValue(work) is not (null or (> 0 and <= MostSteps)))
        {
            result.AddError(Inputs.Say("command.cut.limit.bad"));
        }
    }
}

/// <summary>What a list is cut from, and how: one cloth of open length.</summary>
/// <param name="Measure">How the list writes its measures.</param>
/// <param name="Increments">Empty where the length is not rounded.</param>
/// <param name="ByTheStep">With increments: the purchase is made least rather than the length.</param>
internal sealed record RollTerms(
    ListMeasure Measure,
    bool MayTurn,
    Length Width,
    Length Trim,
    Length Straightening,
    ImmutableArray<Length> Increments,
    bool ByTheStep,
    WorkBudget Budget
);
