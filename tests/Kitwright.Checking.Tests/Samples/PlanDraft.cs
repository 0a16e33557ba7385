using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>
/// Completes a hand-written design, cut list and sewing into a whole plan: every class of pieces gets strips of its
/// own, which is wasteful and right.
/// </summary>
internal sealed class PlanDraft(Length width, Length height)
{
    public static readonly Length Seam = Length.Inches(0, 1, 4);

    private readonly List<PlanFabric> fabrics = [];
    private readonly List<BlockDesign> blocks = [];
    private readonly List<Placement> placements = [];
    private readonly List<Patch> frame = [];
    private readonly List<CutPiece> pieces = [];
    private readonly List<Recipe> recipes = [];

    public void Fabric(string letter, params string[] roles) =>
        fabrics.Add(new(letter, [.. roles], "stock-" + letter, "Fabric " + letter, "#808080"));

    public void Block(string id, int wide, int high, params (string Role, (int X, int Y)[] Corners)[] patches) =>
        blocks.Add(
            new(
                id,
                id,
                Length.Inches(wide),
                Length.Inches(high),
                [.. patches.Select((p, i) => new Patch(new($"block/{id}/patch/{i + 1}"), p.Role, Outline(p.Corners)))]
            )
        );

    public void Place(string block, int column, Motion motion) =>
        placements.Add(new(new($"place/r1/c{column}"), block, motion));

    public void Frame(string id, string role, int left, int bottom, int right, int top) =>
        frame.Add(new(new("frame/" + id), role, Polygon.Rectangle(left, bottom, right, top)));

    public PathId Piece(string label, string role, Length wide, Length high, int count, bool mayTurn = true)
    {
        var id = new PathId("piece/" + label);
        pieces.Add(new(id, label, role, wide, high, count, 0, mayTurn, Message.Plain(role), Message.Plain("by hand")));
        return id;
    }

    /// <param name="wide">Finished width.</param>
    public void Recipe(string id, int wide, int high, string? shows, int runs, string[] makes, params Verb[] verbs) =>
        recipes.Add(
            new(
                new(id),
                "by-hand",
                [.. verbs],
                [.. makes],
                runs,
                Length.Inches(wide) + (Seam * 2),
                Length.Inches(high) + (Seam * 2),
                shows,
                Message.Plain(id)
            )
        );

    /// <summary>Gives the last recipe its picture: the patches of a block, or of the frame with the blocks as tiles.</summary>
    public void Picture(string? block, params (string Of, int Left, int Bottom, int Right, int Top)[] parts)
    {
        var shown = new UnitPicture(
            block is null ? [.. frame] : blocks.Single(b => b.Id == block).Patches,
            block is null ? [.. placements] : [],
            [.. parts.Select(p => new UnitPart(new(p.Of), Polygon.Rectangle(p.Left, p.Bottom, p.Right, p.Top)))]
        );
        recipes[^1] = recipes[^1] with { Picture = shown };
    }

    public static Polygon Outline(params (int X, int Y)[] corners) => new([.. corners.Select(c => new Point(c.X, c.Y))]);

    /// <summary>A piece whose raw lower left corner lies a seam below and left of a finished corner.</summary>
    public static Take TakeAt(string into, PathId piece, Surd x, Surd y) =>
        new(into, piece, Motion.Shift(x - (Surd)Seam, y - (Surd)Seam));

    /// <summary>Joins two neighbors along their common finished line: laid by mirroring, sewn, pressed back to its place.</summary>
    public static Verb[] Join(string into, string other, Line line) =>
        [new Lay(into, into, other, Motion.Reflect(line)), new Sew(into, line), new Press(into, PressToward.Top)];

    public static Line Upright(Surd x) => new(new(x, 0), new(x, 1));

    public static Line Level(Surd y) => new(new(0, y), new(1, y));

    public QuiltPlan Build()
    {
        var bindingWidth = Length.Inches(2, 1, 2);
        var perimeter = (width + height) * 2;
        var allowance = Length.Inches(10);
        var strips = 1;
        while (Length.Inches(40) * strips - bindingWidth * (strips - 1) < perimeter + allowance)
        {
            strips++;
        }

        var last = fabrics[^1];
        var binding = Piece(last.Letter + "9", last.Roles[0], Length.Inches(40), bindingWidth, strips, mayTurn: false);
        ImmutableArray<ClothPlan> cloths = [.. fabrics.Select(Cloth)];
        var backing = Backing();
        return new(
            "Sampler by hand",
            "by hand",
            "mark",
            new string('0', 64),
            "0.1",
            "none",
            Seam,
            Length.Inches(0, 1, 8),
            [.. fabrics],
            new(width, height, [.. blocks], [.. placements], [.. frame]),
            [.. pieces],
            cloths,
            new([.. recipes]),
            new(perimeter, allowance, bindingWidth, strips, binding),
            backing,
            new(
                [
                    .. cloths.Select(c => new Need(c.Letter, NeedKind.Top, c.Roles, c.Fabric, c.Purchase)),
                    new(last.Letter, NeedKind.Backing, ["backing"], last.Number, backing.Purchase),
                ],
                new(backing.Width, backing.Height)
            )
        );
    }

    /// <summary>Panels down the quilt, with half-inch seams.</summary>
    private BackingPlan Backing()
    {
        Length overhang = Length.Inches(4),
            seam = Length.Inches(0, 1, 2),
            usable = Length.Inches(40),
            wide = width + (overhang * 2),
            panel = height + (overhang * 2);
        var panels = 1;
        while ((usable * panels) - (seam * 2 * (panels - 1)) < wide)
        {
            panels++;
        }

        var terms = ClothTerms.Usual;
        return new(overhang, wide, panel, panels, false, usable, panel, seam, terms.Purchase((panel * panels) + terms.Straightening));
    }

    private ClothPlan Cloth(PlanFabric fabric)
    {
        var terms = ClothTerms.Usual;
        var id = new PathId("cloth/" + fabric.Letter);
        var demand = pieces
            .Where(p => fabric.Roles.Contains(p.Role))
            .Select(p => new ClothDemand(p.Id, p.Label, p.Width, p.Height, p.ToCut, p.MayTurn))
            .ToImmutableArray();
        var strips = demand.Select((d, i) => Strips(id.Child("strip", i + 1), d, terms)).ToImmutableArray();
        var sum = strips.Aggregate(Length.Zero, (s, strip) => s + (strip.Height * strip.Times));
        var margin = strips.Max(s => s.Height);
        var figures = new ClothFigures(
            strips.Select(s => s.Height).Distinct().Count(),
            strips.Sum(s => s.Times),
            strips.Sum(s => s.Times * s.SubCuts[0].Times),
            0,
            strips.Zip(demand).Sum(p => (p.First.Times * p.First.SubCuts[0].Times) - p.Second.Count)
        );
        var cut = terms.Straightening + sum;
        return new(
            id,
            fabric.Letter,
            fabric.Roles,
            fabric.Number,
            terms,
            demand,
            strips,
            cut,
            margin,
            terms.Purchase(cut + margin),
            Proof(demand, strips, sum),
            figures
        );
    }

    private static StripCut Strips(PathId id, ClothDemand demand, ClothTerms terms)
    {
        var each = (int)(terms.StripLength / demand.Width).Floor();
        each = Math.Min(each, demand.Count);
        return new(
            id,
            demand.Height,
            (demand.Count + each - 1) / each,
            [new(id.Child("cut", 1), demand.Width, each, [new(demand.Piece, 1, false)])]
        );
    }

    /// <summary>
    /// One class alone in its cloth: its height over the number in a strip is a dual that proves the plan. Otherwise
    /// the area.
    /// </summary>
    private static Proof Proof(ImmutableArray<ClothDemand> demand, ImmutableArray<StripCut> strips, Length sum)
    {
        var unit = Length.Inches(0, 1, 8);
        if (demand.Length == 1 && !demand[0].MayTurn)
        {
            var each = (int)(Length.Inches(40) / demand[0].Width).Floor();
            var dual = (long)(demand[0].Height / unit).Numerator;
            return new(ProofStatus.Proved, sum, unit, each, [dual], "by hand", 0, "done", Searched: false);
        }

        var area = demand.Aggregate(Rational.Zero, (a, d) => a + (d.Width / unit * (d.Height / unit) * d.Count));
        var least = (area / (Length.Inches(40) / unit)).Ceiling();
        var heights = demand.SelectMany(d => d.MayTurn ? new[] { d.Height, d.Width } : [d.Height]).Select(h => (int)(h / unit).Numerator);
        var bound = unit * new Rational(LeastSum([.. heights.Distinct()], least), 1);
        return new(bound == sum ? ProofStatus.Proved : ProofStatus.Within, bound, unit, 1, [], "by hand", 0, "done", Searched: false);
    }

    private static BigInteger LeastSum(int[] heights, BigInteger least)
    {
        var reach = new HashSet<int> { 0 };
        for (var sum = 0; ; sum++)
        {
            if (sum > 0 && heights.Any(h => reach.Contains(sum - h)))
            {
                reach.Add(sum);
            }

            if (sum >= least && reach.Contains(sum))
            {
                return sum;
            }
        }
    }
}
