namespace Kitwright.Pressing;

/// <summary>What is done with the convex outline of cloth on the table.</summary>
internal static class ConvexOutline
{
    private const int Digits = 9;

    /// <summary>The part to the left of a line, or with −1 to its right.</summary>
    /// <remarks>Sutherland and Hodgman, "Reentrant polygon clipping", CACM 17(1), 1974, for one line (from memory).</remarks>
    public static Spot[] Clip(Spot[] outline, SpotLine line, int side)
    {
        var kept = new List<Spot>(outline.Length + 1);
        for (var i = 0; i < outline.Length; i++)
        {
            Spot p = outline[i],
                q = outline[(i + 1) % outline.Length];
            double atP = side * line.Beside(p),
                atQ = side * line.Beside(q);
            if (atP > -Spot.Near)
            {
                kept.Add(p);
            }

            if ((atP > Spot.Near && atQ < -Spot.Near) || (atP < -Spot.Near && atQ > Spot.Near))
            {
                kept.Add(p + ((q - p) * (atP / (atP - atQ))));
            }
        }

        return [.. kept];
    }

    /// <summary>The stretch of a line that lies in the outline or on its edge, in inches along the line; null for none.</summary>
    public static (double Low, double High)? Chord(Spot[] outline, SpotLine line)
    {
        double low = double.PositiveInfinity,
            high = double.NegativeInfinity;
        for (var i = 0; i < outline.Length; i++)
        {
            Spot p = outline[i],
                q = outline[(i + 1) % outline.Length];
            double atP = line.Beside(p),
                atQ = line.Beside(q);
            if (Math.Abs(atP) < Spot.Near)
            {
                Reach(line.Along(p));
            }
            else if (Math.Abs(atQ) >= Spot.Near && atP > 0 != atQ > 0)
            {
                Reach(line.Along(p + ((q - p) * (atP / (atP - atQ)))));
            }
        }

        return high - low > Spot.Near ? (low, high) : null;

        void Reach(double along)
        {
            low = Math.Min(low, along);
            high = Math.Max(high, along);
        }
    }

    /// <summary>On which side of a line the outline reaches further: 1 for left, −1 for right.</summary>
    public static int Body(Spot[] outline, SpotLine line) =>
        outline.Max(line.Beside) >= -outline.Min(line.Beside) ? 1 : -1;

    /// <summary>How far a place is from the edge, in inches.</summary>
    public static double FromEdge(Spot[] outline, Spot spot)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < outline.Length; i++)
        {
            var step = outline[(i + 1) % outline.Length] - outline[i];
            if (step.Length > Spot.Near)
            {
                least = Math.Min(least, Math.Abs(Spot.Cross(step.Unit, spot - outline[i])));
            }
        }

        return least;
    }

    /// <summary>The least convex outline about all places, counterclockwise (Andrew's monotone chain).</summary>
    public static Spot[] About(IEnumerable<Spot> spots)
    {
        // Places that are one but for the last bits would come in any order.
        var sorted = spots
            .Select(p => new Spot(Math.Round(p.X, Digits), Math.Round(p.Y, Digits)))
            .Distinct()
            .OrderBy(p => p.X)
            .ThenBy(p => p.Y)
            .ToArray();
        var chain = new List<Spot>();
        Add(sorted, 0);
        Add(sorted.Reverse(), chain.Count);
        return [.. chain];

        void Add(IEnumerable<Spot> half, int start)
        {
            foreach (var spot in half)
            {
                while (chain.Count >= start + 2 && Spot.Cross(chain[^1] - chain[^2], spot - chain[^1]) <= 1e-9)
                {
                    chain.RemoveAt(chain.Count - 1);
                }

                chain.Add(spot);
            }

            chain.RemoveAt(chain.Count - 1);
        }
    }
}
