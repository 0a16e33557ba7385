using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing.Techniques;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>
/// Works out the units of a quilt from its geometry: a region that a technique knows is a unit; any other is divided
/// by straight seams and its parts are joined in a row. Equal regions are one unit, whatever way they are turned.
/// </summary>
internal sealed class Piecer(
    PieceBook book,
    Seams seams,
    Letters letters,
    Length stripLength,
    TechniqueChoice choice,
    IReadOnlyDictionary<string, int> wanted,
    PrintRoles prints
)
{
    private readonly Dictionary<string, Draft> units = [];
    private readonly List<Draft> drafts = [];
    private readonly List<Finding> findings = [];
    private readonly Dictionary<string, int> numbers = [];
    private readonly Dictionary<string, PathId> ids = [];
    private readonly HashSet<PathId> ragged = [];
    private readonly Dictionary<PathId, Polygon> outlines = [];
    private readonly UnitWays ways = new(book, seams, letters, stripLength, choice, wanted, prints);

    public IReadOnlyList<Draft> Drafts => drafts;
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Techniques that were asked for and would have turned a print, once each.</summary>
    public IEnumerable<Finding> Notes => ways.Notes;

    /// <summary>What each region was made as, by its key.</summary>
    public IReadOnlyDictionary<string, PathId> Ids => ids;

    /// <summary>The regions that could be made in several ways.</summary>
    public IReadOnlyDictionary<string, UnitKind> Kinds => ways.Kinds;

    /// <summary>Makes a region in its own pose: a block, or the top.</summary>
    public void Whole(Region region, PathId id, string kind, string shows, Message name, UnitPicture picture)
    {
        var upright = Canonical.Upright(region);
        var program = Solve(upright.Region, id.Value);
        if (program is not null)
        {
            ids.TryAdd(upright.Key, id);
            drafts.Add(
                new(
                    id,
                    // A block that is one unit of a technique is made as that unit is.
                    program.Kind is "joined" or "block-row" or "center" or "bordered" or "border-run" or "single" ? kind : program.Kind,
                    program.Verbs,
                    program.Makes,
                    region.Width,
                    region.Height,
                    shows,
                    name,
                    picture with { Parts = program.Parts },
                    Outline: null
                )
            );
        }
    }

    /// <summary>Puts a part of a larger unit into a register, in the larger unit's coordinates; answers its id.</summary>
    private PathId? Place(List<Verb> verbs, string register, Region region, string place)
    {
        if (region.Items is [{ Role: not null, Lengthwise: false } only] && Shapes.IsRectangle(only.Shape) && ways.FitsOneStrip(region))
        {
            if (UprightPieces.Keep(PlainPatch.Take(register, book, seams, region), only, book) is not { } take)
            {
                findings.Add(Slanted(only, place));
                return null;
            }

            verbs.Add(take);
            return take.Piece;
        }

        if (region.Items is [{ Block: { } block } tile])
        {
            var id = BlockId(block, tile.Turned);
            verbs.Add(new Use(register, id, tile.Frame));
            return id;
        }

        var pose = Canonical.Of(region);
        if (!units.TryGetValue(pose.Key, out var unit))
        {
            (unit, pose) = NewUnit(pose, region, place);
            if (unit is null)
            {
                return null;
            }

            units.Add(pose.Key, unit);
            ids.TryAdd(pose.Key, unit.Id);
        }

        verbs.Add(new Use(register, unit.Id, pose.Home));
        return unit.Id;
    }

    /// <param name="turned">By how many quarters it lies turned, where its prints stand upright all the same.</param>
    public static PathId BlockId(string block, int turned) => new(turned == 0 ? $"block/{block}" : $"block/{block}/turned/{turned}");

    private (Draft? Unit, Canonical Pose) NewUnit(Canonical pose, Region region, string place)
    {
        var program = Solve(pose.Region, place);
        if (program is null)
        {
            return (null, pose);
        }

        var number = numbers[program.Kind] = numbers.GetValueOrDefault(program.Kind) + 1;
        var id = new PathId($"unit/{program.Kind}-{number}");
        if (program.IsRagged)
        {
            ragged.Add(id);
        }

        var draft = new Draft(
            id,
            program.Kind,
            program.Verbs,
            program.Makes,
            pose.Region.Width,
            pose.Region.Height,
            null,
            program.Name,
            PictureOf(id, pose.Region, program.Parts),
            program.Outline
        );
        drafts.Add(draft);
        outlines[id] = program.Outline ?? Polygon.Rectangle(0, 0, pose.Region.Width, pose.Region.Height);
        return (draft, pose);
    }

    private static UnitPicture PictureOf(PathId id, Region region, ImmutableArray<UnitPart> parts) =>
        new(
            [.. region.Items.Where(i => i.Role is not null).Select((i, n) => new Patch(id.Child("patch", n + 1), i.Role!, i.Shape))],
            [.. region.Items.Where(i => i.Block is not null).Select((i, n) => new Placement(id.Child("place", n + 1), i.Block!, i.Frame))],
            parts
        );

    private Program? Solve(Region region, string place)
    {
        if (ways.Of(region) is { } known)
        {
            return known;
        }

        if (region.Items.Length == 1)
        {
            if (region.Items[0].Block is not null || Shapes.IsRectangle(region.Items[0].Shape) && ways.FitsOneStrip(region))
            {
                return Single(region, place);
            }

            if (Shaped(region) is { } shaped)
            {
                return shaped;
            }

            findings.Add(Unmakeable(region, place));
            return null;
        }

        if (MiteredBorder.Of(region) is { } border)
        {
            return border.Make((verbs, register, part) => Place(verbs, register, part, place), seams);
        }

        if ((RingCuts.Of(region) ?? StraightCuts.Of(region)) is { } cuts)
        {
            return Join(region, cuts, place);
        }

        // Borders and blocks on point are made otherwise: a set-in seam is for patches.
        if (region.Items.Length <= PartingTable.MostItems && region.Items.All(i => i.Role is not null && !i.InBorder) && NotStraight(region, place, out var program))
        {
            return program;
        }

        findings.Add(NoStraightSeam.Of(region, place));
        return null;
    }

    /// <summary>A patch of any shape; one whose print runs at 45 degrees is cut as it lies on the cloth, and turned.</summary>
    private Program? Shaped(Region region)
    {
        var pose = Canonical.Posed(region, region.Items[0].Up is { Quarters: null } ? Motion.EighthTurns(-1) : Motion.Identity);
        if (!CutToShape.Fits(pose.Region))
        {
            return null;
        }

        var program = CutToShape.Make(book, seams, letters, pose.Region, prints.Of(pose.Region.Items[0].Role!).TwoSided);
        return UprightPieces.Keep(pose.Home == Motion.Identity ? program : program.TurnedBack(pose.Home), region, book);
    }

    private Finding Slanted(Item item, string place) => Finding.Of("piecing.print-slanted", place, ("fabric", letters.Of(item.Role!)));

    private Finding Unmakeable(Region region, string place)
    {
        var letter = letters.Of(region.Items[0].Role!);
        return Shapes.IsRectangle(region.Items[0].Shape)
            ? Finding.Of(
                "piecing.too-wide",
                place,
                ("fabric", letter),
                ("width", seams.Rectangle(region.Width)),
                ("height", seams.Rectangle(region.Height)),
                ("strip", stripLength)
            )
            : Finding.Of("piecing.shape", place, ("fabric", letter));
    }

    private Program Single(Region region, string place)
    {
        var verbs = new List<Verb>();
        var id = Place(verbs, "unit", region, place)!.Value;
        return new("single", [.. verbs], ["unit"], Message.Of("unit.single")) { Parts = [new(id, region.Items[0].Shape)] };
    }

    private Program? Join(Region region, StraightCuts cuts, string place)
    {
        var verbs = new List<Verb>();
        var parts = ImmutableArray.CreateBuilder<UnitPart>();
        var generous = Generous(region, cuts);
        for (var i = 0; i < cuts.Parts.Length; i++)
        {
            var part = cuts.Parts[i];
            var register = i == 0 ? "unit" : "next";
            if (generous.Sign > 0 && part.Items.Length == 1)
            {
                if (UprightPieces.Keep(PlainRound.Strip(register, book, seams, part, generous, i == 0, cuts.Lines[0].Step.X.IsZero), part.Items[0], book) is not { } strip)
                {
                    findings.Add(Slanted(part.Items[0], place));
                    return null;
                }

                verbs.Add(strip);
                parts.Add(new(strip.Piece, part.Items[0].Shape));
            }
            else if (Place(verbs, register, part, place) is { } id)
            {
                parts.Add(new(id, part.Items.Length == 1 ? part.Items[0].Shape : OutlineOf(verbs[^1], part)));
            }
            else
            {
                return null;
            }

            if (i > 0)
            {
                var line = cuts.Lines[i - 1];
                verbs.Add(new Lay("unit", "unit", "next", Motion.Reflect(line)));
                verbs.Add(new Sew("unit", line));
                verbs.Add(new Press("unit", i % 2 == 1 ? PressToward.Top : PressToward.Bottom));
            }
        }

        var isRagged = parts.Any(part => ragged.Contains(part.Of)) || cuts.Parts.Any(IsGenerous);
        if (generous.Sign > 0 || (region.IsRectangle && (isRagged || region.Items.Any(i => i.InSetting)) && !region.Items.Any(i => i.InBorder)))
        {
            verbs.Add(SquaredUp(region));
        }

        var kind = JoinNames.KindOf(region, cuts);
        return new(kind, [.. verbs], ["unit"], JoinNames.Of(kind, region, cuts))
        {
            Parts = parts.ToImmutable(),
            Outline = region.IsOnRuler ? null : Hull.Of(parts.SelectMany(part => part.Outline.Corners)),
            IsRagged = isRagged && !region.IsRectangle,
        };
    }

    /// <summary>Of a part that was just put down: what is known of its unit saves looking at all of its patches.</summary>
    private Polygon OutlineOf(Verb put, Region part) =>
        put is Use use && outlines.TryGetValue(use.Unit, out var outline) ? Hull.Of(outline.Moved(use.Motion).Corners) : Hull.Of(part);

    /// <summary>
    /// A way round a partial seam, which is easier to sew, or with parts that are set in; false where there is neither.
    /// The program is null where a part of it cannot be made.
    /// </summary>
    private bool NotStraight(Region region, string place, out Program? program)
    {
        var table = new PartingTable(region);
        var all = ulong.MaxValue >> (PartingTable.MostItems - region.Items.Length);
        var partings = new Partings(table, all);
        if (PartialSearch.Of(table, all, partings.InOrder()) is { } way)
        {
            program = PartialParts.Make(region, way, Put);
        }
        else if (SetInSearch.Of(table, all, partings) is { } joint)
        {
            program = SetInParts.Make(region, joint, Put);
        }
        else
        {
            program = null;
            return false;
        }

        if (program is not null)
        {
            var isRagged = program.Parts.Any(part => ragged.Contains(part.Of));
            program = program with { Verbs = region.IsRectangle && isRagged ? [.. program.Verbs, SquaredUp(region)] : program.Verbs, IsRagged = isRagged && !region.IsRectangle };
        }

        return true;

        PathId? Put(List<Verb> verbs, string register, Region part) => Place(verbs, register, part, place);
    }

    /// <summary>How much wider the strips of a round are cut; zero for anything else, and where the cloth has no room.</summary>
    private Length Generous(Region region, StraightCuts cuts)
    {
        if (!PlainRound.Fits(region, cuts))
        {
            return Length.Zero;
        }

        ways.Note(region, TechniqueBook.Round);
        var generous = PlainRound.Generous(choice.Of(TechniqueBook.Round, region), seams);
        return cuts.Parts.All(part => part.Items.Length > 1 || Length.Max(seams.Rectangle(part.Width), seams.Rectangle(part.Height)) + generous <= stripLength)
            ? generous
            : Length.Zero;
    }

    // Strips whose finished width no ruler has are cut a little wider, and the excess comes off at the edge.
    private static bool IsGenerous(Region part) =>
        part.Items is [{ Role: not null } only] && Shapes.IsRectangle(only.Shape) && !(part.Width.IsRational && part.Height.IsRational);

    private Trim SquaredUp(Region region)
    {
        Surd s = seams.Allowance;
        return new("unit", Polygon.Rectangle(-s, -s, region.Width + s, region.Height + s), Counted: true);
    }
}
