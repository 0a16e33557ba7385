using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>Collects the classes of cut pieces while units are worked out; equal rectangles of one role are one class.</summary>
internal sealed class PieceBook(Length rulerStep)
{
    private readonly Dictionary<string, Entry> entries = [];
    private readonly Dictionary<PathId, string> keys = [];
    private readonly List<Entry> inOrder = [];

    internal sealed record Entry(PathId Id, string Role, Length Width, Length Height, CutGrain Grain, Message Use, Message Why)
    {
        public bool MayTurn => Grain is CutGrain.Straight or CutGrain.Bias;

        /// <summary>Of what is cut from it, where that has a hand.</summary>
        public Handedness Hand { get; init; }

        /// <summary>Whether the other, cut from an equal rectangle of the same fabric, is this one's mirror image.</summary>
        public bool Mirrors(Entry other) =>
            Hand.Hand != Plans.Hand.Either
            && (Role, Width, Height, Hand.Shape) == (other.Role, other.Width, other.Height, other.Hand.Mirrored);
    }

    public Length RulerStep => rulerStep;
    public IReadOnlyList<Entry> Entries => inOrder;

    /// <summary>
    /// The class of a rectangle that lies <paramref name="width"/> by <paramref name="height"/> in its unit, both as
    /// cut. A piece that may turn has its longer side along the width of fabric; one that may not keeps its width
    /// there, however short it is.
    /// </summary>
    public Entry Piece(string role, Length width, Length height, bool mayTurn, Message use, Message why) =>
        Piece(role, width, height, mayTurn ? CutGrain.Straight : CutGrain.Crosswise, use, why);

    /// <param name="hand">Pieces whose shapes have a hand are one class only where they become the same shape.</param>
    public Entry Piece(string role, Length width, Length height, CutGrain grain, Message use, Message why, Handedness hand = default)
    {
        var (across, along) = width >= height || grain is CutGrain.Crosswise or CutGrain.Lengthwise ? (width, height) : (height, width);
        var key = $"{role}|{across.InInches}|{along.InInches}|{grain}|{(hand.Hand == Hand.Either ? "" : hand.Shape)}";
        if (!entries.TryGetValue(key, out var entry))
        {
            entry = new(new($"piece/{inOrder.Count + 1}"), role, across, along, grain, use, why) { Hand = hand };
            entries.Add(key, entry);
            keys.Add(entry.Id, key);
            inOrder.Add(entry);
        }

        return entry;
    }

    public Entry Of(PathId id) => entries[keys[id]];

    /// <summary>The class of an equal rectangle whose print runs up its height, or up its width where it lies on its side.</summary>
    public Entry Upright(Entry piece, bool lies) =>
        Piece(piece.Role, lies ? piece.Height : piece.Width, lies ? piece.Width : piece.Height, CutGrain.Crosswise, piece.Use, piece.Why, piece.Hand);

    /// <summary>Takes the piece so that it lies with its lower left raw corner at the given point.</summary>
    public static Take TakeAt(string into, Entry piece, Length width, Surd left, Surd bottom) =>
        new(
            into,
            piece.Id,
            width == piece.Width
                ? Motion.Shift(left, bottom)
                : Motion.QuarterTurns(1).Then(Motion.Shift(left + piece.Height, bottom))
        );
}
