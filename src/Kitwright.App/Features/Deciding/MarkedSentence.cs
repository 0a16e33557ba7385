using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.App.Features.Deciding;

/// <summary>
/// A sentence whose values are controls: the message is said with a mark in place of each value that can be changed,
/// and comes back as text and marks in the order in which its language puts them.
/// </summary>
public static class MarkedSentence
{
    // Noncharacters: they stand in no text that a person types.
    private const char Open = '\uFDD0';
    private const char Close = '\uFDD1';

    /// <summary>Which slots hold decisions: by message key and slot the kind of the decision.</summary>
    private static readonly ImmutableDictionary<(string Key, string Slot), string> Kinds = new Dictionary<(string, string), string>
    {
        [("sentence.set-straight", "columns")] = "columns",
        [("sentence.set-straight", "rows")] = "rows",
        [("sentence.set-dropped", "columns")] = "columns",
        [("sentence.set-dropped", "rows")] = "rows",
        [("sentence.set-on-point", "columns")] = "columns",
        [("sentence.set-on-point", "rows")] = "rows",
        [("sentence.sashed", "width")] = "sashing",
        [("sentence.border-width", "width")] = "border",
        [("sentence.border-units", "width")] = "border",
        [("sentence.binding", "strip")] = "binding",
        [("sentence.backing", "overhang")] = "overhang",
    }.ToImmutableDictionary();

    /// <summary>Text parts and decisions, one after the other.</summary>
    public static ImmutableArray<(string Text, Decision? Decision)> Parts(Message message, ImmutableArray<Decision> decisions, Catalog language)
    {
        var left = decisions.GroupBy(d => d.Kind).ToDictionary(kind => kind.Key, kind => new Queue<Decision>(kind));
        var said = Saying.Say(language, Mark(message, left));
        var parts = ImmutableArray.CreateBuilder<(string, Decision?)>();
        foreach (var (i, piece) in said.Split(Open, Close).Index())
        {
            if (piece.Length > 0)
            {
                parts.Add(i % 2 == 0 ? (piece, null) : ("", decisions.First(d => d.Name == piece)));
            }
        }

        return parts.ToImmutable();
    }

    private static Message Mark(Message message, Dictionary<string, Queue<Decision>> left)
    {
        var slots = message.Slots;
        foreach (var (name, value) in message.Slots)
        {
            slots = slots.SetItem(
                name,
                value switch
                {
                    _ when Kinds.TryGetValue((message.Key, name), out var kind)
                        && left.TryGetValue(kind, out var queue)
                        && queue.TryDequeue(out var decision) => Marked(value, $"{Open}{decision.Name}{Close}"),
                    Message inner => Mark(inner, left),
                    ImmutableArray<Message> list => list.Select(inner => Mark(inner, left)).ToImmutableArray(),
                    _ => value,
                }
            );
        }

        return message with { Slots = slots };
    }

    // A length's unit follows its control as it follows the length.
    private static object Marked(object value, string mark) => value is Length ? new LengthMark(mark) : mark;
}
