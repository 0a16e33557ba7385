using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Kitwright.Words;

/// <summary>
/// One parsed template. The syntax is a part of ICU MessageFormat: <c>{name}</c>, <c>{name, yards}</c> (a length in
/// yards; in inches without it; an " in" or " yd" right after a length is its unit, and gives way where lengths are said in
/// other units), <c>{name, sentences}</c> (a list of messages one after the other; joined by commas and
/// "and" without it), <c>{name, plural, =0 {…} one {…} other {… # …}}</c>, <c>{name, select, a {…} other {…}}</c>.
/// </summary>
/// <remarks>
/// Source: Unicode ICU user guide, "Formatting Messages" (from memory). Quoting with apostrophes is left out: an
/// apostrophe is itself, and braces stand for slots only.
/// </remarks>
public sealed class Template
{
    private Template(ImmutableArray<Part> parts) => Parts = parts;

    internal ImmutableArray<Part> Parts { get; }

    /// <summary>The slots that the template asks for, with the type each must have.</summary>
    public ImmutableSortedDictionary<string, string> Slots()
    {
        var slots = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        Collect(Parts, slots);
        return slots.ToImmutable();
    }

    private static void Collect(ImmutableArray<Part> parts, ImmutableSortedDictionary<string, string>.Builder slots)
    {
        foreach (var part in parts)
        {
            if (part is Slot slot)
            {
                if (slot.Name != "#" && (!slots.TryGetValue(slot.Name, out var kind) || kind == ""))
                {
                    slots[slot.Name] = slot.Kind;
                }

                foreach (var branch in slot.Branches.Values)
                {
                    Collect(branch, slots);
                }
            }
        }
    }

    /// <summary>The same template with its literal text reworded; names of slots and branches stay.</summary>
    internal Template Reworded(Func<string, string> word) => new(Reworded(Parts, word));

    private static ImmutableArray<Part> Reworded(ImmutableArray<Part> parts, Func<string, string> word) =>
        [
            .. parts.Select(part =>
                part switch
                {
                    Literal literal => new Literal(word(literal.Text)),
                    Slot slot => slot with
                    {
                        Branches = slot.Branches.ToFrozenDictionary(b => b.Key, b => Reworded(b.Value, word), StringComparer.Ordinal),
                    },
                    _ => part,
                }
            ),
        ];

    public static Template Parse(string text)
    {
        var at = 0;
        var parts = ParseParts(text, ref at, inPlural: false);
        return at == text.Length ? new(parts) : throw new FormatException($"A brace too many at {at}: {text}");
    }

    private static ImmutableArray<Part> ParseParts(string text, ref int at, bool inPlural)
    {
        var parts = ImmutableArray.CreateBuilder<Part>();
        var start = at;
        while (at < text.Length && text[at] != '}')
        {
            if (text[at] == '{' || (inPlural && text[at] == '#'))
            {
                AddText(parts, text[start..at]);
                parts.Add(text[at] == '#' ? SlotForNumber(ref at) : ParseSlot(text, ref at));
                start = at;
            }
            else
            {
                at++;
            }
        }

        AddText(parts, text[start..at]);
        return parts.ToImmutable();
    }

    private static void AddText(ImmutableArray<Part>.Builder parts, string text)
    {
        if (text.Length > 0)
        {
            parts.Add(new Literal(text));
        }
    }

    private static Slot SlotForNumber(ref int at)
    {
        at++;
        return new("#", "", FrozenDictionary<string, ImmutableArray<Part>>.Empty);
    }

    private static Slot ParseSlot(string text, ref int at)
    {
        at++;
        var name = Word(text, ref at);
        var kind = "";
        var branches = new Dictionary<string, ImmutableArray<Part>>(StringComparer.Ordinal);
        if (text[at] == ',')
        {
            at++;
            kind = Word(text, ref at);
            if (kind is "plural" or "select")
            {
                Expect(text, ref at, ',');
                while (Peek(text, ref at) != '}')
                {
                    var key = Word(text, ref at);
                    Expect(text, ref at, '{');
                    if (!branches.TryAdd(key, ParseParts(text, ref at, kind == "plural")))
                    {
                        throw new FormatException($"'{name}' has the branch '{key}' twice: {text}");
                    }

                    Expect(text, ref at, '}');
                }

                if (!branches.ContainsKey("other"))
                {
                    throw new FormatException($"'{name}' lacks the branch 'other': {text}");
                }
            }
            else if (kind is not ("yards" or "sentences"))
            {
                throw new FormatException($"'{name}' asks for an unknown kind of slot, '{kind}': {text}");
            }
        }

        Expect(text, ref at, '}');
        return new(name, kind, branches.ToFrozenDictionary(StringComparer.Ordinal));
    }

    private static char Peek(string text, ref int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at < text.Length ? text[at] : throw new FormatException($"Unfinished template: {text}");
    }

    private static void Expect(string text, ref int at, char wanted)
    {
        if (Peek(text, ref at) != wanted)
        {
            throw new FormatException($"Expected '{wanted}' at {at}: {text}");
        }

        at++;
    }

    private static string Word(string text, ref int at)
    {
        Peek(text, ref at);
        var start = at;
        while (at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] is '-' or '_' or '='))
        {
            at++;
        }

        var word = text[start..at];
        Peek(text, ref at);
        return word.Length > 0 ? word : throw new FormatException($"Expected a word at {start}: {text}");
    }

    internal abstract record Part;

    internal sealed record Literal(string Text) : Part;

    internal sealed record Slot(string Name, string Kind, FrozenDictionary<string, ImmutableArray<Part>> Branches)
        : Part;
}
