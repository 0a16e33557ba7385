using System.Collections.Immutable;
using System.Globalization;
using Kitwright.App.Features.Deciding;
using Kitwright.App.Web;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Features.Shop;

/// <summary>What can be chosen for each of the shop's terms; the value that holds is always among the choices.</summary>
public static class TermChoices
{
    private static readonly ImmutableArray<string> Currencies = ["USD", "CAD", "GBP", "EUR", "AUD", "NZD"];

    /// <summary>Sets of lengths in which shops cut (common practice, no source), by name.</summary>
    private static readonly ImmutableArray<(string Name, LengthUnit Unit, ImmutableArray<Length> Steps)> Increments =
    [
        ("eighths-thirds", LengthUnit.Yard, [Yards(1, 8), Yards(1, 3)]),
        ("eighths", LengthUnit.Yard, [Yards(1, 8)]),
        ("quarters", LengthUnit.Yard, [Yards(1, 4)]),
        ("halves", LengthUnit.Yard, [Yards(1, 2)]),
        ("wholes", LengthUnit.Yard, [Yards(1, 1)]),
        ("inches", LengthUnit.Yard, [Length.Inch]),
        ("tens", LengthUnit.Meter, [Centimeters(10)]),
        ("quarter-meters", LengthUnit.Meter, [Centimeters(25)]),
        ("tens-quarter-meters", LengthUnit.Meter, [Centimeters(10), Centimeters(25)]),
        ("half-meters", LengthUnit.Meter, [Centimeters(50)]),
        ("centimeters", LengthUnit.Meter, [Centimeters(1)]),
    ];

    public static ImmutableArray<Term> Of(ShopTerms terms)
    {
        var (cloth, kits) = (terms.Cloth, terms.Kits);
        var language = Languages.Of(terms);
        var metric = terms.SoldBy == LengthUnit.Meter;
        ImmutableArray<Length> small = metric
            ? [.. Enumerable.Range(0, 11).Select(n => Length.Millimeters(5 * n))]
            : [.. Enumerable.Range(0, 9).Select(n => Length.Inches(new Rational(n, 4)))];
        ImmutableArray<Length> widths = metric
            ? [.. Enumerable.Range(0, 31).Select(n => Centimeters(90 + (2 * n)))]
            : [.. Enumerable.Range(0, 25).Select(n => Length.Inches(new Rational(72 + n, 2))), .. Inches(54, 60, 90, 106, 108)];
        ImmutableArray<Length> cuts = metric ? [.. Sizes(5, 10, 20, 25, 50, 100)] : [Length.Inch, Yards(1, 8), Yards(1, 4), Yards(1, 3), Yards(1, 2), Length.Yard];
        ImmutableArray<Length> bolts = metric ? [.. Sizes(800, 1_000, 1_200, 1_500, 2_000, 2_500)] : [.. Inches(288, 360, 432, 540, 720, 900)];
        ImmutableArray<Length> leftovers = metric ? [.. Sizes(3, 4, 5, 6, 8, 10, 15, 20)] : [Length.Inches(1, 1, 2), Length.Inches(2), Length.Inches(2, 1, 2), .. Inches(3, 4, 5, 6, 9)];
        return
        [
            Size("width", cloth.UsableWidth, widths, Small, value => terms with { Cloth = cloth with { UsableWidth = value } }),
            Size("trim", cloth.CrossTrim, small, Small, value => terms with { Cloth = cloth with { CrossTrim = value } }),
            Size("straightening", cloth.Straightening, small, Small, value => terms with { Cloth = cloth with { Straightening = value } }),
            Size("load", kits.LoadLoss, small, Small, value => terms with { Kits = kits with { LoadLoss = value } }),
            new("sold-by", metric ? "meter" : "yard", Words(language, "sold-by", "yard", "meter"), unit => SoldBy(terms, unit)),
            Steps(terms),
            Size("least", cloth.MinimumCut, cuts, Large, value => terms with { Cloth = cloth with { MinimumCut = value } }),
            Size("remnant", kits.UsefulRemnant, cuts, Large, value => terms with { Kits = kits with { UsefulRemnant = value } }),
            Size("leftover", terms.LeastLeftover, leftovers, Small, value => terms with { LeastLeftover = value }),
            Size("put-up", kits.PutUp, bolts, Large, value => terms with { Kits = kits with { PutUp = value } }),
            new(
                "spare",
                Text(terms.SpareStrips),
                [.. Enumerable.Range(0, 6).Append(terms.SpareStrips).Distinct().Order().Select(n => new Choice(Text(n), language.Say("terms.choice.spare", ("strips", n))))],
                text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? terms with { SpareStrips = n } : null
            ),
            new(
                "lengths",
                terms.OneLengthPerFabric ? "fabric" : "role",
                Words(language, "lengths", "role", "fabric"),
                text => text is "fabric" or "role" ? terms with { OneLengthPerFabric = text == "fabric" } : null
            ),
            .. CuttingTerms.Of(terms, small, Small),
            new(
                "currency",
                terms.Currency,
                [.. Currencies.Append(terms.Currency).Distinct().Select(code => new Choice(code, code))],
                text => terms with { Currency = text }
            ),
            new(
                "words",
                terms.Words == TradeWords.British ? "british" : "american",
                Words(language, "words", "american", "british"),
                text => text is "american" or "british" ? terms with { Words = text == "british" ? TradeWords.British : TradeWords.American } : null
            ),
            .. TechniqueBook.Kinds.Select(kind => Way(terms, kind)),
        ];

        string Small(Length length) => metric ? $"{LengthText.Centimeters(length)} cm" : $"{LengthText.Inches(length)} in";

        string Large(Length length) => metric ? $"{LengthText.Meters(length)} m" : $"{LengthText.Yards(length)} yd";
    }

    internal static Term Size(string name, Length value, IEnumerable<Length> offered, Func<Length, string> text, Func<Length, ShopTerms> change) =>
        new(
            name,
            text(value),
            [.. offered.Append(value).Distinct().Order().Select(length => new Choice(text(length), text(length)))],
            said => LengthText.TryParse(said, out var length) ? change(length) : null
        );

    // The usual way is written as none, so that plans made before any was chosen keep their marks.
    private static Term Way(ShopTerms terms, UnitKind kind) =>
        new(
            kind.Name,
            terms.Techniques.GetValueOrDefault(kind.Name, kind.Techniques[0].Name),
            [.. kind.Techniques.Select(t => new Choice(t.Name, Languages.Of(terms).Say($"technique.{kind.Name}.{t.Name}")))],
            name =>
                name == kind.Techniques[0].Name ? terms with { Techniques = terms.Techniques.Remove(kind.Name) }
                : kind.Has(name) ? terms with { Techniques = terms.Techniques.SetItem(kind.Name, name) }
                : null
        );

    private static Term Steps(ShopTerms terms)
    {
        var held = Increments.FirstOrDefault(set => set.Steps.SequenceEqual(terms.Cloth.Increments));
        var offered = Increments.Where(set => set.Unit == terms.SoldBy || set.Name == held.Name).Select(set => set.Name).ToImmutableArray();
        var choices = Words(Languages.Of(terms), "steps", [.. offered]);
        return new(
            "steps",
            held.Name ?? "own",
            held.Name is null ? choices.Insert(0, new("own", string.Join(", ", terms.Cloth.Increments.Select(i => i.ToString())))) : choices,
            text =>
                Increments.FirstOrDefault(set => set.Name == text) is { Name: not null } found
                    ? terms with { Cloth = terms.Cloth with { Increments = found.Steps } }
                    : null
        );
    }

    // What is measured in yards has no like in centimeters: the usual terms of the other kind take its place.
    private static ShopTerms? SoldBy(ShopTerms terms, string unit)
    {
        return unit switch
        {
            "yard" => Kept(ShopTerms.Usual),
            "meter" => Kept(ShopTerms.UsualMetric),
            _ => null,
        };

        ShopTerms Kept(ShopTerms usual) =>
            usual with
            {
                SpareStrips = terms.SpareStrips,
                OneLengthPerFabric = terms.OneLengthPerFabric,
                Words = terms.Words,
                Techniques = terms.Techniques,
                Goal = terms.Goal,
                Order = terms.Order,
            };
    }

    internal static ImmutableArray<Choice> Words(Catalog language, string term, params ReadOnlySpan<string> values)
    {
        var choices = ImmutableArray.CreateBuilder<Choice>();
        foreach (var value in values)
        {
            choices.Add(new(value, language.Say($"terms.choice.{term}.{value}")));
        }

        return choices.ToImmutable();
    }

    private static IEnumerable<Length> Inches(params IEnumerable<int> values) => values.Select(n => Length.Inches(n));

    private static IEnumerable<Length> Sizes(params IEnumerable<int> centimeters) => centimeters.Select(Centimeters);

    private static Length Centimeters(int number) => Length.Millimeters(10 * number);

    private static Length Yards(int numerator, int denominator) => Length.Yards(new(numerator, denominator));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
