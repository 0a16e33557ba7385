using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Words;

/// <summary>
/// Something to be said, without the words: the key of a template and its slots. Records carry messages; only a
/// screen, a page or a terminal turns them into text, in its reader's language and units.
/// </summary>
/// <remarks>
/// Slots hold <see cref="Length"/>, whole numbers (int or long), text, a <see cref="Message"/> or an immutable array of
/// messages; see <see cref="Catalog"/>. Equality is by key and slots. <c>Message.Of("plan.none")</c> has no slots. No
/// slot is named "say": in files that name holds the key.
/// </remarks>
public sealed record Message(string Key, ImmutableSortedDictionary<string, object> Slots)
{
    public static Message Of(string key, params ReadOnlySpan<(string Name, object Value)> slots)
    {
        var builder = ImmutableSortedDictionary.CreateBuilder<string, object>(StringComparer.Ordinal);
        foreach (var (name, value) in slots)
        {
            builder.Add(name, value);
        }

        return new(key, builder.ToImmutable());
    }

    /// <summary>Words that are data already (a name that the user typed), as a message.</summary>
    public static Message Plain(string text) => Of("plain", ("text", text));

    public bool Equals(Message? other) =>
        other is not null
        && Key == other.Key
        && Slots.Count == other.Slots.Count
        && Slots.Zip(other.Slots).All(pair => pair.First.Key == pair.Second.Key && Same(pair.First.Value, pair.Second.Value));

    public override int GetHashCode() => HashCode.Combine(Key, Slots.Count);

    // A file does not tell int from long, and arrays compare by reference: both are equal here when they say the same.
    private static bool Same(object x, object y) =>
        (x, y) switch
        {
            (int a, long b) => a == b,
            (long a, int b) => a == b,
            (ImmutableArray<Message> a, ImmutableArray<Message> b) => a.SequenceEqual(b),
            _ => x.Equals(y),
        };
}
