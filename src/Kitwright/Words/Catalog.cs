using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Kitwright.Measure;

namespace Kitwright.Words;

/// <summary>
/// All templates of one language, and the only place where messages become text. Files <c>Words/en.*.json</c> hold
/// them by area; a key stands in one file only.
/// </summary>
public sealed class Catalog
{
    private static readonly ConcurrentDictionary<(TradeWords, Units), Catalog> Spoken = new();

    private readonly FrozenDictionary<string, Template> templates;

    private Catalog(FrozenDictionary<string, Template> templates, TradeWords words, Units units)
    {
        Region = words == TradeWords.British ? "en-GB" : "en-US";
        this.templates = templates;
        Units = units;
    }

    /// <summary>As the templates are written: American words, inches and yards.</summary>
    public static Catalog English { get; } = Load("en");

    /// <summary>Language tag (BCP 47).</summary>
    public string Region { get; }

    /// <summary>The units in which this catalog says lengths.</summary>
    public Units Units { get; }

    /// <summary>English in the words of one side of the ocean and in these units.</summary>
    public static Catalog For(TradeWords words, Units units) => Spoken.GetOrAdd((words, units), key => English.Said(key.Item1, key.Item2));

    public IEnumerable<string> Keys => templates.Keys;

    public bool Has(string key) => templates.ContainsKey(key);

    public Template this[string key] => templates[key];

    /// <summary>A catalog of these templates by key. Malformed ones are a fault of ours: <see cref="FormatException"/>.</summary>
    public static Catalog Of(IEnumerable<KeyValuePair<string, string>> templates) =>
        new(
            templates.ToFrozenDictionary(pair => pair.Key, pair => Template.Parse(pair.Value), StringComparer.Ordinal),
            TradeWords.American,
            Units.OfTemplates
        );

    private Catalog Said(TradeWords words, Units units)
    {
        var said = templates.ToDictionary();
        string[] files = [.. units.Sizes == LengthUnit.Centimeter ? ["en-metric"] : Array.Empty<string>(), .. units.Cloth == LengthUnit.Meter ? ["en-meter"] : Array.Empty<string>()];
        foreach (var (key, text) in files.SelectMany(Words))
        {
            said[key] = Template.Parse(text);
        }

        if (words == TradeWords.British)
        {
            var british = new Rewording(Words("en-gb"));
            said = said.ToDictionary(pair => pair.Key, pair => pair.Value.Reworded(british.Of));
        }

        return new(said.ToFrozenDictionary(StringComparer.Ordinal), words, units);
    }

    /// <summary>One file of texts by key: whole templates that centimeters or meters want otherwise, or words for words.</summary>
    internal static Dictionary<string, string> Words(string file)
    {
        using var stream = typeof(Catalog).Assembly.GetManifestResourceStream($"Words/{file}.json")!;
        return JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!;
    }

    private static Catalog Load(string language)
    {
        var assembly = typeof(Catalog).Assembly;
        var all = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith($"Words/{language}.", StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            foreach (var (key, text) in JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!)
            {
                if (!all.TryAdd(key, text))
                {
                    throw new InvalidDataException($"The message '{key}' stands twice; the second is in {name}.");
                }
            }
        }

        return Of(all);
    }

    /// <summary>Text without slots, or with them: <c>Say("cut.strips", ("count", 11))</c>.</summary>
    public string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Say(Message.Of(key, slots));

    /// <summary>The message in words. A key that no file has is a fault of ours and throws.</summary>
    public string Say(Message message)
    {
        var text = new StringBuilder();
        Write(text, templates[message.Key].Parts, message.Slots, number: null);
        return text.ToString();
    }

    private void Write(
        StringBuilder text,
        ImmutableArray<Template.Part> parts,
        ImmutableSortedDictionary<string, object> slots,
        object? number
    )
    {
        // The unit in which the length just before was said: what stands for it in the template gives way.
        LengthUnit? unit = null;
        foreach (var part in parts)
        {
            if (part is Template.Literal literal)
            {
                text.Append(unit is { } said ? Kitwright.Words.Units.After(literal.Text, said) : literal.Text);
                unit = null;
                continue;
            }

            var slot = (Template.Slot)part;
            var value = slot.Name == "#" ? number! : slots[slot.Name];
            switch (slot.Kind)
            {
                case "plural":
                    Write(text, Branch(slot, PluralKeys(value)), slots, value);
                    break;
                case "select":
                    Write(text, Branch(slot, [Text(value, "")]), slots, number);
                    break;
                default:
                    text.Append(Text(value, slot.Kind));
                    unit = value is Length or LengthMark ? Units.Of(slot.Kind) : null;
                    break;
            }
        }
    }

    private static ImmutableArray<Template.Part> Branch(Template.Slot slot, ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            if (slot.Branches.TryGetValue(key, out var parts))
            {
                return parts;
            }
        }

        return slot.Branches["other"];
    }

    // English has two plural forms; an exact "=0" goes first, as in ICU.
    private static string[] PluralKeys(object value)
    {
        var count = Convert.ToInt64(value, CultureInfo.InvariantCulture);
        return [$"={count.ToString(CultureInfo.InvariantCulture)}", count == 1 ? "one" : "other"];
    }

    private string Text(object value, string kind) =>
        value switch
        {
            string text => text,
            Length length => Kitwright.Words.Units.Text(length, Units.Of(kind)),
            LengthMark mark => mark.Text,
            int count => count.ToString("N0", CultureInfo.InvariantCulture),
            long count => count.ToString("N0", CultureInfo.InvariantCulture),
            Message message => Say(message),
            ImmutableArray<Message> list when kind == "sentences" => string.Join(' ', list.Select(Say)),
            ImmutableArray<Message> list => List(list),
            _ => throw new InvalidDataException($"A message cannot hold a {value.GetType().Name}."),
        };

    private string List(ImmutableArray<Message> items) =>
        items.Length switch
        {
            0 => "",
            1 => Say(items[0]),
            2 => Say("list.two", ("first", items[0]), ("second", items[1])),
            _ => Say(
                "list.more",
                ("first", string.Join(", ", items[..^1].Select(Say))),
                ("last", items[^1])
            ),
        };
}
