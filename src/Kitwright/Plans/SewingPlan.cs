using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Plans;

/// <summary>
/// How the quilt is made, as programs of a few verbs, each made only from pieces and from units of earlier recipes.
/// The last recipe makes the quilt top.
/// </summary>
public sealed record SewingPlan(ImmutableArray<Recipe> Recipes);

/// <summary>How one class of unit is made. The verbs are what the checker interprets; the words are for people.</summary>
/// <param name="Id"><c>unit/goose-2</c>, <c>block/star</c>, <c>frame/top</c>.</param>
/// <param name="Kind">A key of the words for this kind of step (<c>half-square</c>, <c>join</c>); the checker ignores it.</param>
/// <param name="Verbs">One run, in order; registers are local to the run and start empty.</param>
/// <param name="Makes">The registers that each hold one finished copy of the unit when the run ends.</param>
/// <param name="Runs">How often the run is carried out for the quilt.</param>
/// <param name="Width">Unfinished width of a copy, seam allowances included.</param>
/// <param name="Height">Unfinished height of a copy, seam allowances included.</param>
/// <param name="Shows">
/// The block that a copy must show, or <see cref="Recipe.WholeTop"/> for the top; null for a unit on the way.
/// </param>
/// <param name="Name">What a person calls the unit: "flying goose, Fabric B on A".</param>
public sealed record Recipe(
    PathId Id,
    string Kind,
    ImmutableArray<Verb> Verbs,
    ImmutableArray<string> Makes,
    int Runs,
    Length Width,
    Length Height,
    string? Shows,
    Message Name
)
{
    public const string WholeTop = "*";

    public int Copies => Makes.Length * Runs;

    /// <summary>
    /// The finished outline of a copy, convex, where it is not the rectangle that width and height give: a triangle,
    /// say. Width and height are then those of its bounding box and two seams. Null for a rectangle.
    /// </summary>
    public Polygon? Outline { get; init; }

    /// <summary>What a copy looks like, for drawings.</summary>
    public UnitPicture Picture { get; init; } = UnitPicture.Empty;
}

/// <summary>
/// What a finished copy of a unit shows, in the unit's own coordinates (finished lower left corner at the origin):
/// for drawings, and verified by the checker like everything else.
/// </summary>
/// <param name="Patches">Fabric by role, in finished size.</param>
/// <param name="Tiles">Whole blocks inside it.</param>
/// <param name="Parts">The pieces and units that it is joined from, by outline, in the order of sewing.</param>
public sealed record UnitPicture(ImmutableArray<Patch> Patches, ImmutableArray<Placement> Tiles, ImmutableArray<UnitPart> Parts)
{
    public static UnitPicture Empty { get; } = new([], [], []);
}

/// <summary>One part of a unit: the id of a piece class or of an earlier recipe, and where it lies.</summary>
public sealed record UnitPart(PathId Of, Polygon Outline);

/// <summary>
/// One act at the table. Registers name what lies on it: a cut piece, a sewn unit, or two layers laid right sides
/// together. A register is used up by the act that takes it.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "do")]
[JsonDerivedType(typeof(Take), "take")]
[JsonDerivedType(typeof(Use), "use")]
[JsonDerivedType(typeof(Turn), "turn")]
[JsonDerivedType(typeof(Lay), "lay")]
[JsonDerivedType(typeof(Sew), "sew")]
[JsonDerivedType(typeof(SewIn), "sew-in")]
[JsonDerivedType(typeof(SewPart), "sew-part")]
[JsonDerivedType(typeof(CloseSeam), "close")]
[JsonDerivedType(typeof(CutAlong), "cut")]
[JsonDerivedType(typeof(Press), "press")]
[JsonDerivedType(typeof(Trim), "trim")]
public abstract record Verb;

/// <summary>Take one cut piece, right side up, its lower left corner at the origin (width along x), then move it.</summary>
public sealed record Take(string Into, PathId Piece, Motion Motion) : Verb;

/// <summary>Take one copy of an earlier unit, right side up, in its own coordinates, then move it.</summary>
public sealed record Use(string Into, PathId Unit, Motion Motion) : Verb;

/// <summary>Move what lies in a register; a motion that mirrors shows the wrong side and is refused at the end.</summary>
public sealed record Turn(string On, Motion Motion) : Verb;

/// <summary>
/// Lay <paramref name="Top"/> over <paramref name="Bottom"/>, right sides together: the motion must mirror. Both are
/// used up; <paramref name="Into"/> holds the two layers.
/// </summary>
public sealed record Lay(string Into, string Bottom, string Top, Motion Motion) : Verb;

/// <summary>Sew the two layers together along the whole line where both lie under it.</summary>
public sealed record Sew(string On, Line Line) : Verb;

/// <summary>
/// Set a part into an angle: sew it to what lies in <paramref name="On"/> along each line in turn, from the line's
/// start to its end, and fold it open. Each line begins where the one before ends and turns left; the part lies to the
/// left of them all, what it is sewn to lies to the right. Both are given as they lie when open, right side up.
/// </summary>
/// <param name="On">Holds the two, joined, afterwards; <paramref name="Part"/> is used up.</param>
/// <param name="Toward">Top: under the part that is set in.</param>
public sealed record SewIn(string On, string Part, ImmutableArray<Line> Lines, PressToward Toward) : Verb;

/// <summary>
/// A partial seam: lay a part on what lies in <paramref name="On"/>, right sides together, and sew along the line from
/// its start only as far as <paramref name="Stop"/>; beyond it both edges stay loose. Both are given as they lie when
/// open, on opposite sides of the line. What is then sewn to one of the loose edges leaves the other side folded back.
/// </summary>
/// <param name="On">Holds the two afterwards, until <see cref="CloseSeam"/>; <paramref name="Part"/> is used up.</param>
/// <param name="Line">To the end that the seam will have once it is closed.</param>
public sealed record SewPart(string On, string Part, Line Line, Point Stop) : Verb;

/// <summary>Sew the rest of the partial seam, from where it stops to its line's end, and press the whole of it.</summary>
/// <param name="Toward">Top: under the part that was sewn on in part.</param>
public sealed record CloseSeam(string On, PressToward Toward) : Verb;

/// <summary>
/// Cut through everything along a line. What lies to the left of the line's direction goes to
/// <paramref name="Left"/>, the rest to <paramref name="Right"/>; a null side is thrown away.
/// </summary>
public sealed record CutAlong(string On, Line Line, string? Left, string? Right) : Verb;

/// <summary>
/// Open two layers that one seam holds: the top layer folds over the seam onto the other side.
/// <paramref name="Toward"/> says where the allowances go.
/// </summary>
public sealed record Press(string On, PressToward Toward) : Verb;

/// <summary>
/// Cut to a rectangle, in the register's coordinates. A <paramref name="Counted"/> trim is an act that the plan
/// counts; one that is not counted may only remove an excess of at most the plan's rounding step each way.
/// </summary>
public sealed record Trim(string On, Polygon Rectangle, bool Counted) : Verb;

/// <summary>Where the seam allowances of a pressed seam lie.</summary>
public enum PressToward
{
    /// <summary>Both under the layer that lay on top.</summary>
    Top,

    /// <summary>Both under the layer that lay at the bottom.</summary>
    Bottom,
    Open,

    /// <summary>
    /// Round the corner where seams meet, all the same way: the halves of the seam on opposite sides. Which way the seam
    /// that ends there says.
    /// </summary>
    Swirled,
}
