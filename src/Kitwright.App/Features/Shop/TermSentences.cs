using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Words;

namespace Kitwright.App.Features.Shop;

/// <summary>The shop's terms as sentences, each value a term that can be changed.</summary>
public static class TermSentences
{
    // A noncharacter: it stands in no text that a person types.
    private const char Mark = '\uFDD0';

    /// <summary>Sentences in parts: text, or a term.</summary>
    /// <param name="language">Of the sentences; the choices have theirs from the terms.</param>
    public static ImmutableArray<ImmutableArray<(string Text, Term? Term)>> Of(Catalog language, ImmutableArray<Term> terms) =>
        [
            Say(language, terms, "width", Slot("width"), Slot("trim")),
            Say(language, terms, "squaring", Slot("straightening"), Slot("load")),
            Say(language, terms, "sold", ("unit", Marked("sold-by")), Slot("steps"), Slot("least")),
            Say(language, terms, "kit", Slot("spare"), Slot("lengths")),
            Say(language, terms, "table", Slot("layers"), ("every", Marked("square-every")), ("loss", Marked("square-loss"))),
            Say(language, terms, "ruler", Slot("ruler")),
            Say(language, terms, "order", Slot("goal"), Slot("first"), Slot("second"), Slot("third"), Slot("fourth"), Slot("fifth")),
            Say(language, terms, "bolts", Slot("remnant"), ("putUp", Marked("put-up")), Slot("leftover")),
            Say(language, terms, "money", Slot("currency"), Slot("words")),
            Say(language, terms, "ways", Slot("half-square"), Slot("goose"), Slot("hourglass"), Slot("square-in-square"), Slot("row"), Slot("round")),
        ];

    private static ImmutableArray<(string Text, Term? Term)> Say(
        Catalog language,
        ImmutableArray<Term> terms,
        string sentence,
        params ReadOnlySpan<(string Name, object Value)> slots
    ) =>
        [
            .. Saying.Say(language, Message.Of($"terms.say.{sentence}", slots))
                .Split(Mark)
                .Select((part, i) => i % 2 == 0 ? (part, (Term?)null) : ("", terms.First(term => term.Name == part)))
                .Where(part => part.Item2 is not null || part.Item1.Length > 0),
        ];

    private static (string, object) Slot(string name) => (name, Marked(name));

    private static string Marked(string name) => $"{Mark}{name}{Mark}";
}
