using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// The keys of a region in its four quarter turns, each with its lower left corner at the origin, without turning it:
/// coordinates are numbered in their order, and a turn only changes which numbers count and from which side.
/// </summary>
internal static class PoseKeys
{
    private const int Turns = 4;

    /// <summary>Coordinates along one axis: their order, and how far they lie from either end of the region.</summary>
    private sealed class Axis
    {
        private readonly Dictionary<Surd, int> ranks = [];
        private readonly string[] fromLow;
        private readonly string[] fromHigh;

        public Axis(IEnumerable<Surd> values, Surd low, Surd high)
        {
            Surd[] sorted = [.. values.Distinct().Order()];
            foreach (var (rank, value) in sorted.Index())
            {
                ranks.Add(value, rank);
            }

            fromLow = Array.ConvertAll(sorted, value => (value - low).ToString());
            fromHigh = Array.ConvertAll(sorted, value => (high - value).ToString());
        }

        public int Rank(Surd value) => ranks[value];

        /// <summary>A rank as it is counted, and its distance as text, from one end.</summary>
        public (int Order, string Text) From(int rank, bool high) => high ? (-rank, fromHigh[rank]) : (rank, fromLow[rank]);
    }

    /// <summary>By the number of quarter turns; each equals <see cref="Region.Key"/> of the region so turned.</summary>
    public static string[] Of(Region region)
    {
        var (low, high) = region.Bounds;
        var across = new Axis(region.Items.SelectMany(i => i.Shape.Corners).Select(c => c.X), low.X, high.X);
        var up = new Axis(region.Items.SelectMany(i => i.Shape.Corners).Select(c => c.Y), low.Y, high.Y);
        var items = region.Items.Select(item => (Item: item, Corners: item.Shape.Corners.Select(c => (X: across.Rank(c.X), Y: up.Rank(c.Y))).ToArray())).ToArray();
        return [.. Enumerable.Range(0, Turns).Select(turns => string.Join('\n', items.Select(i => Key(i.Item, i.Corners, turns)).Order(StringComparer.Ordinal)))];

        string Key(Item item, (int X, int Y)[] ranks, int turns)
        {
            var corners = Array.ConvertAll(ranks, corner => Turned(corner, turns));
            var start = 0;
            for (var i = 1; i < corners.Length; i++)
            {
                if ((corners[i].X.Order, corners[i].Y.Order).CompareTo((corners[start].X.Order, corners[start].Y.Order)) < 0)
                {
                    start = i;
                }
            }

            return item.ContentKey(turns) + "|" + string.Join(';', corners.Select((_, i) => corners[(start + i) % corners.Length]).Select(c => $"({c.X.Text}, {c.Y.Text})"));
        }

        ((int Order, string Text) X, (int Order, string Text) Y) Turned((int X, int Y) corner, int turns) =>
            turns switch
            {
                0 => (across.From(corner.X, high: false), up.From(corner.Y, high: false)),
                1 => (up.From(corner.Y, high: true), across.From(corner.X, high: false)),
                2 => (across.From(corner.X, high: true), up.From(corner.Y, high: true)),
                _ => (up.From(corner.Y, high: false), across.From(corner.X, high: true)),
            };
    }
}
