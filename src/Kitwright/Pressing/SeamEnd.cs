namespace Kitwright.Pressing;

/// <summary>A seam that ends on a line which another seam is sewn along.</summary>
/// <param name="Along">Where, in inches along the line.</param>
/// <param name="Away">The way from the line along the seam, of length one.</param>
/// <param name="TowardTop">How far its top side lies forward along the line, for one inch aside.</param>
internal readonly record struct SeamEnd(SeamId Seam, double Along, Spot Away, double TowardTop)
{
    public bool Slants(SpotLine line) => Math.Abs(Spot.Dot(Away, line.Step)) > 0.1;

    public static IEnumerable<SeamEnd> On(TracedCloth cloth, SpotLine line, double low, double high)
    {
        foreach (var seam in cloth.Seams)
        {
            bool from = Math.Abs(line.Beside(seam.From)) < Spot.Near,
                to = Math.Abs(line.Beside(seam.To)) < Spot.Near;
            if (from == to)
            {
                continue;
            }

            var at = from ? seam.From : seam.To;
            var along = line.Along(at);
            if (along > low + Spot.Near && along < high - Spot.Near)
            {
                yield return new(seam.Seam, along, ((from ? seam.To : seam.From) - at).Unit, Spot.Dot(line.Step, seam.TowardTop));
            }
        }
    }

    /// <summary>
    /// Ends that meet across the line: those that lie on one another when the layers lie right sides together, and,
    /// where an end has no such partner, one that goes straight on.
    /// </summary>
    public static IEnumerable<Crossing> Meetings(SeamId across, SpotLine line, SeamEnd[] below, SeamEnd[] above)
    {
        var mirror = Pose.MirrorIn(line);
        var paired = new HashSet<SeamEnd>();
        foreach (var straight in new[] { false, true })
        {
            foreach (var one in below)
            {
                foreach (var other in above)
                {
                    var away = straight ? one.Away * -1 : mirror.Turned(one.Away);
                    if (Math.Abs(one.Along - other.Along) < Spot.Near && other.Away.IsAt(away) && !paired.Contains(one) && !paired.Contains(other))
                    {
                        paired.Add(one);
                        paired.Add(other);
                        yield return new(across, line.At(one.Along), one.Seam, other.Seam, one.TowardTop * other.TowardTop < 0);
                    }
                }
            }
        }
    }
}
