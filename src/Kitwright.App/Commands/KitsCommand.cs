using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Optimise.Allocation;
using Kitwright.Piecing;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>kits QUILT STOCK</c>: how many kits the bolts carry, which bolt gives which cut, what to order.</summary>
internal static class KitsCommand
{
    public const int UsualCount = 10;

    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var stock = new Argument<string>("STOCK") { Description = Inputs.Say("command.stock") };
        var each = new Option<int>("--each")
        {
            Description = Inputs.Say("command.each"),
            DefaultValueFactory = _ => UsualCount,
        };
        var want = new Option<string[]>("--want") { Description = Inputs.Say("command.want") };
        var backing = new Option<bool>("--backing") { Description = Inputs.Say("command.backing") };
        var json = Inputs.Json();
        var command = new Command("kits", Inputs.Say("command.kits")) { quilt, stock, each, want, backing, json };
        command.SetAction(
            (parsed, cancel) =>
            {
                var output = parsed.InvocationConfiguration.Output;
                var (kits, language) = Plan(
                    parsed.GetValue(quilt)!,
                    parsed.GetValue(stock)!,
                    parsed.GetValue(each),
                    parsed.GetValue(want) ?? [],
                    parsed.GetValue(backing),
                    Inputs.WordsOf(parsed),
                    cancel
                );
                if (parsed.GetValue(json))
                {
                    Report.WriteJson(
                        output,
                        new
                        {
                            format = KitPlan.Format,
                            version = KitPlan.Version,
                            kits = kits.Value,
                            findings = Report.Json(kits.Findings),
                        }
                    );
                }
                else
                {
                    Report.Write(output, kits.Findings, language);
                    if (kits.Value is { } plan)
                    {
                        KitText.Write(output, plan, language);
                    }
                }

                return Task.FromResult(kits.Value is null ? ExitCode.Findings : Report.ExitFor(kits.Findings));
            }
        );
        return command;
    }

    private static (Checked<KitPlan> Kits, Catalog Language) Plan(
        string quiltPath,
        string stockPath,
        int each,
        string[] want,
        bool withBacking,
        TradeWords words,
        CancellationToken cancel
    )
    {
        var quilt = Inputs.ReadQuilt(quiltPath);
        var shelf = Inputs.ReadStock(stockPath);
        if (quilt.Value is null || shelf.Value is null)
        {
            return (new(null, [.. quilt.Findings, .. shelf.Findings]), Catalog.For(words, Units.OfTemplates));
        }

        var wanted = Wanted(quilt.Value, each, want);
        if (wanted.Value is null)
        {
            return (new(null, wanted.Findings), Languages.Of(quilt.Value, words));
        }

        var options = Standing.OptionsFor(quilt.Value);
        var cut = Cutters.Named(options.Budget, cancel);
        var kits = KitRoom.Plan(
            quilt.Value,
            shelf.Value,
            wanted.Value,
            withBacking,
            colorway => PlanningLine.Plan(quilt.Value, colorway, shelf.Value.Fabrics, options, cut),
            quilt.Value.Units == LengthUnit.Centimeter ? ShopTerms.UsualMetric.Kits : KitTerms.Usual,
            BoltBudget.Planning,
            cancel
        );
        return (new(kits.Value, [.. quilt.Findings, .. shelf.Findings, .. kits.Findings]), Languages.Of(quilt.Value, words));
    }

    /// <param name="want">NAME=COUNT.</param>
    public static Checked<ImmutableSortedDictionary<string, int>> Wanted(Quilt quilt, int each, string[] want)
    {
        var counts = quilt.Colorways.ToImmutableSortedDictionary(c => c.Name, _ => each, StringComparer.Ordinal);
        foreach (var text in want)
        {
            var equals = text.LastIndexOf('=');
            if (
                equals < 1
                || !int.TryParse(text[(equals + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var count)
                || count > 100_000
            )
            {
                return Checked<ImmutableSortedDictionary<string, int>>.Failed(
                    Finding.Of("command.want.bad", "--want", ("text", text))
                );
            }

            var (colorway, findings) = Inputs.Find(quilt, text[..equals].Trim());
            if (colorway is null)
            {
                return new(null, findings);
            }

            counts = counts.SetItem(colorway.Name, count);
        }

        return Checked<ImmutableSortedDictionary<string, int>>.Of(counts);
    }
}

/// <summary>A kit plan as text for the terminal.</summary>
internal static class KitText
{
    public static void Write(TextWriter output, KitPlan plan, Catalog words)
    {
        foreach (var line in plan.Lines)
        {
            output.WriteLine(words.Say(KitWords.Carries(line)) + " " + words.Say(KitWords.Limit(line)));
            output.WriteLine(
                words.Say("kits.wanted", ("wanted", line.Wanted), ("complete", line.Complete), ("colorway", line.Colorway))
            );
        }

        foreach (var fabric in plan.Fabrics)
        {
            output.WriteLine();
            output.WriteLine(words.Say("kits.fabric", ("fabric", fabric.Name), ("length", fabric.OnHand)));
            foreach (var load in fabric.Loads)
            {
                output.WriteLine(
                    "  "
                        + words.Say(
                            "kits.load",
                            ("bolt", load.Bolt),
                            ("lot", load.Lot),
                            ("length", load.OnHand),
                            ("loss", load.Loss),
                            ("remnant", load.Remnant)
                        )
                );
                foreach (var cuts in KitWords.Cuts(load))
                {
                    output.WriteLine("    " + words.Say(cuts));
                }
            }

            if (KitWords.Short(fabric) is { } missing)
            {
                output.WriteLine("  " + words.Say(missing));
            }

            output.WriteLine("  " + words.Say(KitWords.Proof(fabric)));
        }

        foreach (var order in plan.Order)
        {
            output.WriteLine();
            output.WriteLine(words.Say(KitWords.Order(order)));
        }
    }
}
