using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using Kitwright.App.Planning;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
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

    private readonly Option<string?> width = new("--width") { Description = Inputs.Say("command.cut.width") };
    private readonly Option<string?> cloth = new("--cloth") { Description = Inputs.Say("command.cut.cloth") };
    private readonly Option<string?> unit = new("--unit")
    {
        Description = Inputs.Say("command.cut.unit"),
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<bool> turn = new("--turn") { Description = Inputs.Say("command.cut.turn") };
    private readonly Option<string?> trim = new("--trim") { Description = Inputs.Say("command.cut.trim") };
    private readonly Option<string?> straightening = new("--straightening") { Description = Inputs.Say("command.cut.straightening") };
    private readonly Option<string[]> increments = new("--increment") { Description = Inputs.Say("command.cut.increment") };
    private readonly Option<int> stages = new("--stages") { Description = Inputs.Say("command.cut.stages"), DefaultValueFactory = _ => 2 };
    private readonly Option<string> first = new("--first-cut")
    {
        Description = Inputs.Say("command.cut.first"),
        DefaultValueFactory = _ => "across",
    };
    private readonly Option<string> last = new("--last-cut")
    {
        Description = Inputs.Say("command.cut.last"),
        DefaultValueFactory = _ => "non-exact",
    };
    private readonly Option<int[]> folds = new("--fold") { Description = Inputs.Say("command.cut.fold") };
    private readonly Option<int> seed = new("--seed") { Description = Inputs.Say("command.cut.seed") };
    private readonly Option<string?> keep = new("--keep") { Description = Inputs.Say("command.cut.keep") };
    private readonly Option<string?> goal = new("--goal") { Description = Inputs.Say("command.cut.goal") };
    private readonly Option<string> budget = new("--budget")
    {
        Description = Inputs.Say("command.budget"),
        DefaultValueFactory = _ => "normal",
    };
    private readonly Option<long?> work = new("--work") { Description = Inputs.Say("command.cut.work") };
    private readonly Option<double?> seconds = new("--seconds") { Description = Inputs.Say("command.cut.seconds") };

    private readonly Option<string?> repeatAlong = new("--repeat-along") { Description = Inputs.Say("command.cut.repeat-along") };
    private readonly Option<string?> repeatAcross = new("--repeat-across") { Description = Inputs.Say("command.cut.repeat-across") };
    private readonly Option<bool> match = new("--match") { Description = Inputs.Say("command.cut.match") };
    private readonly Option<string?> panel = new("--panel") { Description = Inputs.Say("command.cut.panel") };

    private IEnumerable<Option> All =>
        [width, cloth, unit, turn, stages, first, last, folds, trim, straightening, increments, goal, budget, work, seconds, seed, keep, repeatAlong, repeatAcross, match, panel];

    public void AddTo(Command command)
    {
        goal.AcceptOnlyFromAmong("length", "purchase", "cost", "sheets");
        first.AcceptOnlyFromAmong("across", "along", "either");
        last.AcceptOnlyFromAmong("non-exact", "exact", "homogeneous");
        stages.AcceptOnlyFromAmong("2", "3");
        folds.AcceptOnlyFromAmong("1", "2", "4");
        budget.AcceptOnlyFromAmong("while-you-type", "normal", "thorough");
        foreach (var option in All)
        {
            command.Add(option);
        }

        command.Validators.Add(Validate);
    }

    /// <summary>The same options as names and values, as a query has them; a flag's value is empty or true.</summary>
    /// <param name="hasCloth">Whether a list of cloths comes along; its name is not for the caller to choose.</param>
    public static Checked<CutTerms> FromPairs(ImmutableArray<(string Name, string Value)> pairs, bool hasCloth)
    {
        var options = new CutOptions();
        var command = new Command("cut");
        options.AddTo(command);
        var known = options.All.Where(o => o != options.cloth).ToDictionary(o => o.Name, StringComparer.Ordinal);
        List<string> args = hasCloth ? [options.cloth.Name, "cloth"] : [];
        foreach (var (name, value) in pairs)
        {
            if (!known.ContainsKey($"--{name}"))
            {
                return Checked<CutTerms>.Failed(
                    Finding.Of("api.query", $"query/{name}", ("name", name), ("text", value), ("wanted", string.Join(", ", known.Keys.Select(k => k[2..]))))
                );
            }

            // Joined, so that no value can be taken for an option.
            args.Add(value.Length == 0 ? $"--{name}" : $"--{name}={value}");
        }

        var parsed = command.Parse(args);
        return parsed.Errors.Count > 0
            ? Checked<CutTerms>.Failed([.. parsed.Errors.Select(e => Finding.Of("api.option", "query", ("what", e.Message)))])
            : Checked<CutTerms>.Of(options.Read(parsed));
    }

    public CutTerms Read(ParseResult parsed)
    {
        var measure = Measure(parsed.GetResult(unit));
        Length? Given(string? text) => text is not null && measure.TryRead(text, out var length) ? length : null;
        var steps = parsed.GetValue(increments) ?? [];
        return new(
            measure,
            parsed.GetValue(turn),
            Given(parsed.GetValue(width)),
            parsed.GetValue(cloth),
            Given(parsed.GetValue(trim)) ?? Length.Zero,
            Given(parsed.GetValue(straightening)) ?? Length.Zero,
            [.. steps.Select(step => Given(step)!.Value)],
            parsed.GetValue(stages),
            parsed.GetValue(first) switch
            {
                "along" => FirstCut.Along,
                "either" => FirstCut.Either,
                _ => FirstCut.Across,
            },
            parsed.GetValue(last) switch
            {
                "exact" => LastCut.Exact,
                "homogeneous" => LastCut.Homogeneous,
                _ => LastCut.NonExact,
            },
            parsed.GetValue(folds) is { Length: > 0 } layers ? [.. layers.Distinct().Order()] : [1],
            parsed.GetValue(goal),
            Budget(parsed) with { Seed = parsed.GetValue(seed) },
            parsed.GetValue(seed),
            Given(parsed.GetValue(keep))
        )
        {
            RepeatAlong = Given(parsed.GetValue(repeatAlong)),
            RepeatAcross = Given(parsed.GetValue(repeatAcross)),
            MatchAll = parsed.GetValue(match),
            Panel = Given(parsed.GetValue(panel)),
        };
    }

    private WorkBudget Budget(ParseResult parsed) =>
        (parsed.GetValue(work), parsed.GetValue(seconds)) switch
        {
            (_, { } limit) => new("seconds", (long)(limit * 1_000_000_000), TimeSpan.FromSeconds(limit)),
            ({ } limit, _) => new("work", limit, TimeSpan.FromSeconds(MostSeconds)),
            _ => Cutters.Limit(parsed.GetValue(budget)!),
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
        Check(keep, result.GetValue(keep), aboveZero: false);
        Check(straightening, result.GetValue(straightening), aboveZero: false);
        Check(repeatAlong, result.GetValue(repeatAlong), aboveZero: true);
        Check(repeatAcross, result.GetValue(repeatAcross), aboveZero: true);
        Check(panel, result.GetValue(panel), aboveZero: true);
        var steps = result.GetValue(increments) ?? [];
        foreach (var step in steps)
        {
            Check(increments, step, aboveZero: true);
        }

        Agree(result, steps.Length > 0);
        if (result.GetValue(seconds) is not (null or (> 0 and <= MostSeconds)) || result.GetValue(work) is not (null or (> 0 and <= MostSteps)))
        {
            result.AddError(Inputs.Say("command.cut.limit.bad"));
        }
    }

    /// <summary>A roll has a width and strips across it; pieces of cloth have sizes, and a first cut either way.</summary>
    private void Agree(CommandResult result, bool hasSteps)
    {
        var (isRoll, chosen) = (result.GetValue(width) is not null, result.GetValue(goal));
        if (isRoll == result.GetValue(cloth) is not null)
        {
            result.AddError(Inputs.Say("command.cut.width-or-cloth"));
            return;
        }

        void Only(bool wrong, string option)
        {
            if (wrong)
            {
                result.AddError(Words.Catalog.English.Say(isRoll ? "command.cut.cloth-only" : "command.cut.roll-only", ("option", option)));
            }
        }

        if (isRoll)
        {
            Only(result.GetResult(first) is { Implicit: false }, first.Name);
            Only(chosen is "cost" or "sheets", $"{goal.Name} {chosen}");
        }
        else
        {
            Only(result.GetValue(straightening) is not null, straightening.Name);
            Only(hasSteps, increments.Name);
            Only(result.GetValue(folds) is { Length: > 0 }, folds.Name);
            Only(chosen is "length" or "purchase", $"{goal.Name} {chosen}");
        }

        Printed(result, isRoll, hasSteps);
        if (chosen == "purchase" && !hasSteps)
        {
            result.AddError(Inputs.Say("command.cut.goal.purchase"));
        }
    }

    /// <summary>Repeats and panels are for the engine that cuts quilts, and a panel is an end and a step of its own.</summary>
    private void Printed(CommandResult result, bool isRoll, bool hasSteps)
    {
        // An option that is not given has its usual value, which is not worked out yet.
        bool Usual<T>(Option<T> option, Func<T?, bool> usual) => result.GetResult(option) is not { Implicit: false } || usual(result.GetValue(option));
        var plain = isRoll && Usual(stages, given => given == 2) && Usual(last, given => given == "non-exact") && Usual(folds, given => given!.All(layers => layers == 1));
        foreach (var option in new Option[] { repeatAlong, repeatAcross, match, panel }.Where(option => !plain && result.GetResult(option) is { Implicit: false }))
        {
            result.AddError(Words.Catalog.English.Say("command.cut.plain-only", ("option", option.Name)));
        }

        if (result.GetValue(panel) is not null)
        {
            (Option Option, bool Given)[] others =
            [
                (repeatAlong, result.GetValue(repeatAlong) is not null),
                (repeatAcross, result.GetValue(repeatAcross) is not null),
                (match, result.GetValue(match)),
                (straightening, result.GetValue(straightening) is not null),
                (increments, hasSteps),
            ];
            foreach (var (option, _) in others.Where(other => other.Given))
            {
                result.AddError(Words.Catalog.English.Say("command.cut.panel-only", ("option", option.Name)));
            }
        }
    }
}
