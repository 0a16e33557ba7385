using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing.Techniques;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>The techniques that make a region as one unit: the one that is chosen, or one that keeps its prints upright.</summary>
internal sealed class UnitWays(
    PieceBook book,
    Seams seams,
    Letters letters,
    Length stripLength,
    TechniqueChoice choice,
    IReadOnlyDictionary<string, int> wanted,
    PrintRoles prints
)
{
    /// <summary>No technique makes a unit of more patches.</summary>
    public const int MostInOneUnit = 5;

    private readonly Dictionary<string, UnitKind> kinds = [];
    private readonly Dictionary<string, Finding> notes = [];

    /// <summary>The regions that could be made in several ways.</summary>
    public IReadOnlyDictionary<string, UnitKind> Kinds => kinds;

    /// <summary>Techniques that were asked for and would have turned a print, once each.</summary>
    public IEnumerable<Finding> Notes => notes.Values;

    public void Note(Region region, UnitKind kind) => kinds[region.Key()] = kind;

    /// <summary>Whether a plain piece is cut whole: no side longer than a strip; of a panel what the panel holds as it stands.</summary>
    public bool FitsOneStrip(Region region)
    {
        Length width = seams.Rectangle(region.Width),
            height = seams.Rectangle(region.Height);
        return Length.Max(width, height) <= stripLength
            || region.Items[0] is { Role: { } role, Up: { Quarters: { } quarters } }
                && prints.Of(role).Panel is { } panel
                && (quarters % 2 == 0 ? width : height) <= stripLength
                && (quarters % 2 == 0 ? height : width) <= panel;
    }

    /// <summary>A technique that fits in one of the four turns of the region and keeps its prints upright; its copies are turned back.</summary>
    public Program? Of(Region region)
    {
        if (region.Items.Length > MostInOneUnit)
        {
            return null;
        }

        var key = region.Key();
        var making = new Making(book, seams, letters, stripLength, wanted.GetValueOrDefault(key));
        for (var turns = 0; turns < 4; turns++)
        {
            var pose = Canonical.Posed(region, turns);
            foreach (var program in InPose(pose.Region, making, key))
            {
                if (UprightPieces.Keep(turns == 0 ? program : program.TurnedBack(pose.Home), region, book) is { } kept)
                {
                    return kept;
                }
            }
        }

        return null;
    }

    /// <summary>The ways in which a region may be made in this pose, the one that is wanted first.</summary>
    private IEnumerable<Program> InPose(Region region, Making making, string key)
    {
        if (LengthwiseStrip.Fits(region))
        {
            yield return LengthwiseStrip.Make(book, seams, letters, region);
            yield break;
        }

        if (KnownUnits.In(region) is { } unit)
        {
            kinds[key] = unit.Kind;
            foreach (var program in Ways(unit, region, making))
            {
                yield return program;
            }

            yield break;
        }

        if (Usual(region) is { } usual)
        {
            yield return usual;
        }
    }

    /// <summary>The technique that is chosen, and where that turns a print the others of its kind.</summary>
    private IEnumerable<Program> Ways((UnitKind Kind, Func<string, Making, Program?> Make) unit, Region region, Making making)
    {
        var chosen = choice.Of(unit.Kind, region);
        if (unit.Make(chosen, making) is not { } wanted)
        {
            yield break;
        }

        yield return wanted;
        // Asked for more: the print would have been turned.
        notes.TryAdd(
            $"{unit.Kind.Name}/{chosen}",
            Finding.NoteOf("piecing.print-technique", $"/techniques/{unit.Kind.Name}", ("unit", Message.Of($"technique.{unit.Kind.Name}")), ("way", Message.Of($"technique.{unit.Kind.Name}.{chosen}")))
        );
        foreach (var technique in unit.Kind.Techniques.Where(t => t.Name != chosen))
        {
            if (unit.Make(technique.Name, making) is { } other)
            {
                yield return other;
            }
        }
    }

    private Program? Usual(Region region)
    {
        if (StitchAndFlip.Fits(region, out var body, out var corners))
        {
            return StitchAndFlip.Make(book, seams, letters, region, body, corners);
        }

        if (SettingTriangle.Make(book, seams, letters, region) is { } setting)
        {
            return setting;
        }

        if (TrianglesFromSquares.IsHalf(region))
        {
            return TrianglesFromSquares.MakeHalf(book, seams, letters, region);
        }

        if (TrianglesFromSquares.IsQuarter(region))
        {
            return TrianglesFromSquares.MakeQuarter(book, seams, letters, region);
        }

        if (SquareOnPoint.Fits(region))
        {
            return SquareOnPoint.Make(book, seams, letters, region);
        }

        if (region.Items is [{ Role: { } role } only] && Shapes.IsRectangle(only.Shape) && region.Width > region.Height && !FitsOneStrip(region) && seams.Rectangle(region.Height) <= stripLength)
        {
            return JoinedStrip.Make(book, seams, letters, role, region.Width, region.Height, LongestStrip(only), copies: 2);
        }

        return null;
    }

    /// <summary>Of a strip that lies level: where its length runs along the cloth, a printed panel ends it.</summary>
    private Length LongestStrip(Item item) =>
        item.Up is { Quarters: { } quarters } && quarters % 2 == 1 && prints.Of(item.Role!).Panel is { } panel ? Length.Min(stripLength, panel) : stripLength;
}
