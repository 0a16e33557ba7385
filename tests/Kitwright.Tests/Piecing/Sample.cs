using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Tests.Piecing;

/// <summary>Small designs by hand.</summary>
internal static class Sample
{
    public static Patch Patch(int id, string role, params (Rational X, Rational Y)[] corners) =>
        new(new($"block/star/patch/{id}"), role, new([.. corners.Select(c => new Point(c.X, c.Y))]));

    public static Patch Rectangle(int id, string role, Rational left, Rational bottom, Rational right, Rational top) =>
        Patch(id, role, (left, bottom), (right, bottom), (right, top), (left, top));

    /// <summary>The geese of one side of a 12 in block of 2 in units: four stacked 4 by 2 geese are two a side.</summary>
    public static IEnumerable<Patch> Goose(int id, string goose, string sky, Rational x, Rational y) =>
    [
        Patch(id, goose, (x, y), (x + 4, y), (x + 2, y + 2)),
        Patch(id + 1, sky, (x, y), (x + 2, y + 2), (x, y + 2)),
        Patch(id + 2, sky, (x + 4, y), (x + 4, y + 2), (x + 2, y + 2)),
    ];

    public static Quilt Quilt(int blocks, params ImmutableArray<string> roles) =>
        new(
            "Sample",
            null,
            LengthUnit.Inch,
            Length.Inches(0, 1, 4),
            Length.Inches(0, 1, 8),
            null,
            [.. roles.Append("binding").Append("backing").Select(r => new Role(r, r, null))],
            [],
            new(SettingKind.Straight, blocks, 1, [[new("star", 0, false)]], null),
            [],
            new("binding", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("backing", Length.Inches(4), Length.Inches(0, 1, 2), null),
            ImmutableSortedDictionary<string, string>.Empty,
            []
        );

    /// <summary>Equal blocks in one row.</summary>
    public static Design Row(int count, Length side, params ImmutableArray<Patch> patches) =>
        new(
            side * count,
            side,
            [new("star", "Star", side, side, patches)],
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(i => new Placement(new($"place/r1/c{i + 1}"), "star", Motion.Shift((Surd)(side * i), 0))),
            ],
            []
        );
}
