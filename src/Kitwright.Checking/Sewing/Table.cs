using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>The table on which one run of a recipe is carried out: its registers, and what may be laid on it.</summary>
/// <param name="Units">Earlier units by id; null for one that was refused.</param>
internal sealed record Table(
    PathId Recipe,
    Length Seam,
    Length RulerStep,
    IReadOnlyDictionary<PathId, CutPiece> Pieces,
    IReadOnlyDictionary<PathId, Unit?> Units,
    Effort Effort
)
{
    private readonly Dictionary<string, OnTable> registers = new(StringComparer.Ordinal);

    public IEnumerable<string> InUse => registers.Keys.Order(StringComparer.Ordinal);

    public Finding? Put(string register, OnTable item, string place) =>
        registers.TryAdd(register, item)
            ? null
            : Finding.Of("check.sewing.register-in-use", place, ("register", register));

    /// <summary>Takes what a register holds off the table.</summary>
    public Finding? Pick(string register, string place, out OnTable item)
    {
        if (registers.Remove(register, out var found))
        {
            item = found;
            return null;
        }

        item = Nothing;
        return Finding.Of("check.sewing.register-empty", place, ("register", register));
    }

    public Finding? PickCloth(string register, string place, out Cloth cloth)
    {
        cloth = Nothing;
        if (Pick(register, place, out var item) is { } finding)
        {
            return finding;
        }

        if (item is HalfSewn)
        {
            return Finding.Of("check.sewing.partial-open", place, ("register", register));
        }

        if (item is not Cloth single)
        {
            return Finding.Of("check.sewing.not-pressed-open", place, ("register", register));
        }

        cloth = single;
        return null;
    }

    public Finding? PickLayers(string register, string place, out Layers layers)
    {
        layers = NoLayers;
        if (Pick(register, place, out var item) is { } finding)
        {
            return finding;
        }

        if (item is not Layers pair)
        {
            return Finding.Of("check.sewing.not-two-layers", place, ("register", register));
        }

        layers = pair;
        return null;
    }

    public static Finding? CheckMotion(Motion motion, string place) =>
        Rigid.Keeps(motion) ? null : Finding.Of("check.sewing.motion", place);

    public static Finding? CheckLine(Line line, string place) =>
        line.From != line.To ? null : Finding.Of("check.sewing.line", place);

    private static readonly Cloth Nothing = new([], Rigid.Still);
    private static readonly Layers NoLayers = new(Nothing, [Nothing], []);
}
