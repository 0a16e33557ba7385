using System.Collections.Immutable;

namespace Kitwright.Words;

/// <summary>
/// One parsed template. The syntax is a part of ICU MessageFormat: <c>{name}</c>, <c>{name, length}</c>,
/// <c>{name, plural, one {…} other {… # …}}</c>, <c>{name, select, a {…} other {…}}</c>.
/// </summary>
/// <remarks>Source: Unicode ICU user guide, "Formatting Messages" (from memory); quoting with apostrophes is left out.</remarks>
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

    public static Template Parse(string text)
    {
        var at = 0;
        var parts = ParseParts(text, ref at, inPlural: false, nested: false);
        return new(parts);
    }

    private static ImmutableArray<Part> ParseParts(string text, ref int at, bool inPlural, bool nested)
    {
        var parts = ImmutableArray.CreateBuilder<Part>();
        var start = at;
        while (at < text.Length && !(nested && text[at] == '}'))
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
        return new("#", "", ImmutableDictionary<string, ImmutableArray<Part>>.Empty);
    }

    private static Slot ParseSlot(string text, ref int at)
    {
        at++;
        var name = Word(text, ref at);
        var kind = "";
        var branches = ImmutableDictionary.CreateBuilder<string, ImmutableArray<Part>>();
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
                    branches.Add(key, ParseParts(text, ref at, kind == "plural", nested: true));
                    Expect(text, ref at, '}');
                }

                if (!branches.ContainsKey("other"))
                {
                    throw new FormatException($"'{name}' lacks the branch 'other': {text}");
                }
            }
        }

        Expect(text, ref at, '}');
        return new(name, kind, branches.ToImmutable());
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

    internal sealed record Slot(string Name, string Kind, ImmutableDictionary<string, ImmutableArray<Part>> Branches)
        : Part;
}
