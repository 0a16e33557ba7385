using System.Collections.Immutable;
using Kitwright.Words;

namespace Kitwright.Findings;

/// <summary>How much a finding weighs.</summary>
public enum Weight
{
    /// <summary>Worth knowing; the work goes on.</summary>
    Note,

    /// <summary>The input cannot be used as it stands.</summary>
    Fault,
}

/// <summary>
/// What is wrong or worth knowing about an input or a plan: data, never an exception.
/// </summary>
/// <param name="Rule">A stable key of the rule, such as <c>quilt.overlap</c>; also the key of its message.</param>
/// <param name="Place">Where: a path id, "line 12", or a JSON pointer.</param>
/// <param name="Reason">What is wrong there.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record Finding(string Rule, string Place, Message Reason, Message Remedy, Weight Weight = Weight.Fault)
{
    /// <summary>What was measured and what was expected, where the rule compares two values.</summary>
    public Message? Measured { get; init; }
    public Message? Expected { get; init; }

    /// <summary>Reason and remedy by convention: templates <c>RULE</c> and <c>RULE.remedy</c>, sharing the slots.</summary>
    public static Finding Of(string rule, string place, params ReadOnlySpan<(string Name, object Value)> slots) =>
        new(rule, place, Message.Of(rule, slots), Message.Of(rule + ".remedy", slots));

    public static Finding NoteOf(string rule, string place, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Of(rule, place, slots) with { Weight = Weight.Note };
}

/// <summary>A value with what was found on the way; the value is absent where a fault was found.</summary>
public sealed record Checked<T>(T? Value, ImmutableArray<Finding> Findings)
    where T : class
{
    public bool Good => Value is not null && Findings.All(f => f.Weight != Weight.Fault);

    public static Checked<T> Of(T value) => new(value, []);

    public static Checked<T> Failed(params ImmutableArray<Finding> findings) => new(null, findings);
}
