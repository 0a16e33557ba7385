using System.Collections.Immutable;
using System.Globalization;
using Kitwright.App.Features.Deciding;
using Kitwright.App.Web;
using Kitwright.Cutting;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.App.Features.Shop;

/// <summary>How the shop cuts strips at its table, and what counts first in its cutting plans.</summary>
internal static class CuttingTerms
{
    private const string Unsaid = "unsaid";

    private static readonly ImmutableArray<string> Places = ["first", "second", "third", "fourth", "fifth"];

    private static readonly ImmutableArray<(string Name, int Layers)> Layers = [("one", 1), ("two", 2), ("four", 4)];

    /// <param name="losses">What squaring may be said to take.</param>
    public static IEnumerable<Term> Of(ShopTerms terms, IEnumerable<Length> losses, Func<Length, string> text)
    {
        var language = Languages.Of(terms);
        var metric = terms.SoldBy == LengthUnit.Meter;
        var table = terms.Cloth.Table ?? TableTerms.Usual with { SquaringLoss = terms.Cloth.Straightening };
        if (terms.Cloth.Table is null && metric)
        {
            table = table with { RulerLength = TableTerms.UsualMetricRuler };
        }

        yield return new(
            "layers",
            Layers.FirstOrDefault(layers => layers.Layers == table.Layers).Name ?? "one",
            TermChoices.Words(language, "layers", [.. Layers.Select(layers => layers.Name)]),
            said => Layers.FirstOrDefault(layers => layers.Name == said) is { Name: not null } found ? At(terms, table with { Layers = found.Layers }) : null
        );
        yield return new(
            "square-every",
            Text(table.SquareEvery),
            [.. new[] { 0, 2, 3, 4, 5, 6, 8, 10, 12, table.SquareEvery }.Distinct().Order().Select(n => new Choice(Text(n), language.Say("terms.choice.square-every", ("strips", n))))],
            said => int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? At(terms, table with { SquareEvery = n }) : null
        );
        yield return TermChoices.Size("square-loss", table.SquaringLoss, losses, text, loss => At(terms, table with { SquaringLoss = loss }));
        yield return Ruler(terms, table, metric ? [.. new[] { 300, 450, 600, 900 }.Select(n => Length.Millimeters(n))] : [.. new[] { 12, 18, 24, 36 }.Select(n => Length.Inches(n))], text);
        yield return new(
            "goal",
            terms.Goal == CutGoal.ByTheInch ? "inch" : "step",
            TermChoices.Words(language, "goal", "step", "inch"),
            said => said is "step" or "inch" ? terms with { Goal = said == "inch" ? CutGoal.ByTheInch : CutGoal.ByTheStep } : null
        );
        for (var i = 0; i < Places.Length; i++)
        {
            var place = i;
            yield return new(
                Places[i],
                Name(terms.Order[i]),
                TermChoices.Words(language, "aim", [.. CutOrder.Usual.Select(Name)]),
                said => CutOrder.Usual.Any(aim => Name(aim) == said)
                    ? terms with { Order = CutOrder.With(terms.Order, place, CutOrder.Usual.First(aim => Name(aim) == said)) }
                    : null
            );
        }
    }

    /// <summary>The order in words, for a sentence with a slot for each place.</summary>
    public static (string Name, object Value)[] Said(ImmutableArray<CutAim> order) =>
        [.. Places.Select((place, i) => (place, (object)Saying.Say($"terms.choice.aim.{Name(order[i])}")))];

    /// <summary>Nothing need be said of the ruler only where nothing else is said of the table.</summary>
    private static Term Ruler(ShopTerms terms, TableTerms table, ImmutableArray<Length> offered, Func<Length, string> text)
    {
        var said = TermChoices.Size("ruler", table.RulerLength, offered, text, length => At(terms, table with { RulerLength = length }));
        return table is not { Layers: 1, SquareEvery: 0 }
            ? said
            : said with
            {
                Value = terms.Cloth.Table is null ? Unsaid : said.Value,
                Choices = [.. TermChoices.Words(Languages.Of(terms), "ruler", Unsaid), .. said.Choices],
                Change = value => value == Unsaid ? terms with { Cloth = terms.Cloth with { Table = null } } : said.Change(value),
            };
    }

    private static ShopTerms At(ShopTerms terms, TableTerms table) => terms with { Cloth = terms.Cloth with { Table = table } };

    private static string Name(CutAim aim) =>
        aim switch
        {
            CutAim.Purchase => "purchase",
            CutAim.Settings => "settings",
            CutAim.Cuts => "cuts",
            CutAim.Surplus => "surplus",
            _ => "leftover",
        };

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
