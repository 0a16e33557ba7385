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
    private readonly FrozenDictionary<string, Template> templates;

    private Catalog(FrozenDictionary<string, Template> templates) => this.templates = templates;

    public static Catalog English { get; } = Load("en");

    public IEnumerable<string> Keys => templates.Keys;

    public bool Has(string key) => templates.ContainsKey(key);

    public Template this[string key] => templates[key];

    /// <summary>A catalog of these templates by key. Malformed ones are a fault of ours: <see cref="FormatException"/>.</summary>
    public static Catalog Of(IEnumerable<KeyValuePair<string, string>> templates) =>
        new(templates.ToFrozenDictionary(pair => pair.Key, pair => Template.Parse(pair.Value), StringComparer.Ordinal));

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
        foreach (var part in parts)
        {
            if (part is Template.Literal literal)
            {
                text.Append(literal.Text);
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
            Length length when kind == "yards" => LengthText.Yards(length),
            Length length => LengthText.Inches(length),
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
