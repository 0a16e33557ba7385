using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Tests.Pressing;

/// <summary>Quilts of one block of the book, edge to edge or sashed.</summary>
internal static class BookQuilt
{
    public static Quilt Of(string block, int columns, int rows, Sashing? sashing = null)
    {
        var drawn = BlockBook.Find(block)!;
        return new(
            drawn.Name,
            null,
            LengthUnit.Inch,
            Length.Inches(0, 1, 4),
            Length.Inches(0, 1, 8),
            null,
            [.. drawn.Roles, new("frame", "frame", null), new("binding", "binding", null), new("backing", "backing", null)],
            [drawn.At(Length.Inches(12))],
            new(SettingKind.Straight, columns, rows, [[new(block, 0, false)]], sashing),
            [],
            new("binding", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("backing", Length.Inches(4), Length.Inches(0, 1, 2), null),
            ImmutableSortedDictionary<string, string>.Empty,
            []
        );
    }

    /// <summary>Null where the block cannot be pieced with straight seams.</summary>
    public static QuiltPlan? Plan(Quilt quilt) => QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value;
}
