using System.Collections.Immutable;

namespace Kitwright.Piecing;

/// <summary>What a person may choose between: for each kind of unit the techniques that make it, the usual one first.</summary>
public static class TechniqueBook
{
    public static UnitKind HalfSquare { get; } =
        new(
            "half-square",
            [
                new("two", Accuracy.Steady),
                new("two-trimmed", Accuracy.Trimmed),
                new("eight", Accuracy.Steady),
                new("eight-trimmed", Accuracy.Trimmed),
                new("one", Accuracy.Steady),
                new("one-trimmed", Accuracy.Trimmed),
                new("triangles", Accuracy.Loose),
            ]
        );

    public static UnitKind Goose { get; } =
        new(
            "goose",
            [
                new("flip", Accuracy.Steady),
                new("flip-trimmed", Accuracy.Trimmed),
                new("four", Accuracy.Steady),
                new("four-trimmed", Accuracy.Trimmed),
                new("triangles", Accuracy.Loose),
            ]
        );

    public static UnitKind Hourglass { get; } =
        new("hourglass", [new("two", Accuracy.Steady), new("two-trimmed", Accuracy.Trimmed), new("triangles", Accuracy.Loose)]);

    public static UnitKind SquareInSquare { get; } = new("square-in-square", [new("triangles", Accuracy.Loose), new("flip", Accuracy.Steady), new("flip-trimmed", Accuracy.Trimmed)]);

    public static UnitKind Row { get; } = new("row", [new("pieces", Accuracy.Steady), new("strip-set", Accuracy.Steady)]);

    /// <summary>Plain strips round a pieced unit, as logs are.</summary>
    public static UnitKind Round { get; } =
        new("round", [new("exact", Accuracy.Steady), new("trimmed", Accuracy.Trimmed), new("trimmed-wide", Accuracy.Trimmed)]);

    public static ImmutableArray<UnitKind> Kinds { get; } = [HalfSquare, Goose, Hourglass, SquareInSquare, Row, Round];

    public static UnitKind? Kind(string name) => Kinds.FirstOrDefault(kind => kind.Name == name);
}

/// <summary>A kind of unit that can be made in several ways.</summary>
/// <param name="Name">As quilt files write it: <c>half-square</c>.</param>
public sealed record UnitKind(string Name, ImmutableArray<Technique> Techniques)
{
    public bool Has(string technique) => Techniques.Any(t => t.Name == technique);
}

/// <summary>One way to make a kind of unit.</summary>
/// <param name="Name">As quilt files write it: <c>eight-trimmed</c>.</param>
public sealed record Technique(string Name, Accuracy Accuracy);

/// <summary>How well a unit is likely to come out; common practice, no source.</summary>
public enum Accuracy
{
    /// <summary>Cut generous and trimmed to size, so that errors of cutting and sewing are cut off.</summary>
    Trimmed,

    /// <summary>Sewn before it is cut apart, or from pieces with the grain: nothing stretches on the way.</summary>
    Steady,

    /// <summary>Pieces with loose bias edges are handled before they are sewn.</summary>
    Loose,
}
