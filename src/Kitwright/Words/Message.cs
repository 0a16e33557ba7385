using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Words;

/// <summary>
/// Something to be said, without the words: the key of a template and its slots. Records carry messages; only a
/// screen, a page or a terminal turns them into text, in its reader's language and units.
/// </summary>
/// <remarks>
/// Slots hold <see cref="Length"/>, whole numbers, text, a <see cref="Message"/> or a list of messages; see
/// <see cref="Catalog"/>. Equality is by key and slots. <c>Message.Of("plan.none")</c> has no slots.
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
        other is not null && Key == other.Key && Slots.SequenceEqual(other.Slots);

    public override int GetHashCode() => HashCode.Combine(Key, Slots.Count);
}
