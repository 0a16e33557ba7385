namespace Kitwright.Pressing;

/// <summary>Cloth on the table as the trace sees it: a convex outline, the seams in it and what it is made of.</summary>
internal sealed record TracedCloth(Spot[] Outline, List<TracedSeam> Seams, int Patches, bool Blocks, double Lightness, double Area)
{
    public TracedCloth Moved(Pose by) =>
        this with
        {
            Outline = [.. Outline.Select(by.Apply)],
            Seams = [.. Seams.Select(seam => seam.Moved(by))],
        };

    public Spot Middle => Outline.Aggregate((sum, corner) => sum + corner) * (1.0 / Outline.Length);

    public TracedCloth Clip(SpotLine line, int side) =>
        this with
        {
            Outline = ConvexOutline.Clip(Outline, line, side),
            Seams = [.. Seams.Select(seam => seam.Clip(line, side)).OfType<TracedSeam>()],
        };

    /// <summary>Both side by side.</summary>
    public TracedCloth With(TracedCloth other, TracedSeam seam)
    {
        var both = Beside(other);
        both.Seams.Add(seam);
        return both;
    }

    /// <summary>Both side by side, the seam between them left out: what is set in turns a corner, which no one line tells.</summary>
    public TracedCloth Beside(TracedCloth other)
    {
        var area = Area + other.Area;
        List<TracedSeam> seams = new(Seams.Count + other.Seams.Count + 1);
        seams.AddRange(Seams);
        seams.AddRange(other.Seams);
        return new(
            ConvexOutline.About(Outline.Concat(other.Outline)),
            seams,
            Patches + other.Patches,
            Blocks || other.Blocks,
            ((Lightness * Area) + (other.Lightness * other.Area)) / area,
            area
        );
    }

    public SeamSide Side(int ends) => new(Patches, Blocks, Lightness, ends);

    /// <summary>What a larger unit has to know: the seams that reach the edge or its allowance.</summary>
    public TracedCloth AsPart(double seam) =>
        this with
        {
            Seams =
            [
                .. Seams.Where(s =>
                    ConvexOutline.FromEdge(Outline, s.From) < (2 * seam) + Spot.Near || ConvexOutline.FromEdge(Outline, s.To) < (2 * seam) + Spot.Near
                ),
            ],
        };
}

/// <summary>What a register holds: one cloth, or two laid right sides together with the lines sewn through them.</summary>
internal sealed record TracedLayers(TracedCloth Bottom, TracedCloth? Top, List<SpotLine> Sewn)
{
    public static TracedLayers Of(TracedCloth cloth) => new(cloth, null, []);

    public TracedLayers Moved(Pose by) => new(Bottom.Moved(by), Top?.Moved(by), [.. Sewn.Select(line => line.Moved(by))]);

    /// <summary>What lies on one side of a cut; a sewn line goes where it still holds both layers.</summary>
    public TracedLayers Clip(SpotLine line, int side)
    {
        var bottom = Bottom.Clip(line, side);
        var top = Top?.Clip(line, side);
        return new(
            bottom,
            top,
            [
                .. Sewn.Where(seam =>
                    ConvexOutline.Chord(bottom.Outline, seam) is not null
                    && top is not null
                    && ConvexOutline.Chord(top.Outline, seam) is not null
                    && IsInside(seam, line, side)
                ),
            ]
        );
    }

    // A seam along the cut itself belongs to neither side.
    private bool IsInside(SpotLine seam, SpotLine cut, int side)
    {
        var chord = ConvexOutline.Chord(Bottom.Outline, seam);
        return chord is { } c && Math.Max(side * cut.Beside(seam.At(c.Low)), side * cut.Beside(seam.At(c.High))) > Spot.Near;
    }
}
