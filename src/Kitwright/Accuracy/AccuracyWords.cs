using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Accuracy;

/// <summary>What the model of accuracy has to say about a quilt, in sentences.</summary>
public static class AccuracyWords
{
    /// <param name="units">In which what is estimated is rounded.</param>
    public static ImmutableArray<Message> Of(QuiltPlan plan, QuiltAccuracy accuracy, LengthUnit units = LengthUnit.Inch, Length? tolerance = null)
    {
        var (untrimmed, trimmed) = (accuracy.Untrimmed, accuracy.Trimmed);
        return
        [
            Message.Of(
                "accuracy.block",
                ("mean", Estimate.Off(untrimmed.Block.Mean, units)),
                ("spread", Estimate.Nearest(untrimmed.Block.Deviation, units)),
                ("sixteenth", Estimate.Share(untrimmed.OverSixteenth)),
                ("eighth", Estimate.Share(untrimmed.OverEighth))
            ),
            Message.Of(
                "accuracy.trimmed",
                ("sixteenth", Estimate.Share(trimmed.OverSixteenth)),
                ("eighth", Estimate.Share(trimmed.OverEighth))
            ),
            .. tolerance is { } most
                ? [Message.Of("accuracy.tolerance", ("tolerance", most), ("untrimmed", Estimate.Share(untrimmed.Over(most))), ("trimmed", Estimate.Share(trimmed.Over(most))))]
                : ImmutableArray<Message>.Empty,
            Message.Of(
                "accuracy.top",
                ("width", plan.Design.Width + Estimate.Nearest(untrimmed.Across.Mean, units)),
                ("height", plan.Design.Height + Estimate.Nearest(untrimmed.Up.Mean, units)),
                ("spread", Estimate.Nearest(Math.Max(untrimmed.Across.Deviation, untrimmed.Up.Deviation), units)),
                ("designWidth", plan.Design.Width),
                ("designHeight", plan.Design.Height)
            ),
            Message.Of(
                "accuracy.true-seam",
                ("block", Estimate.Off(accuracy.TrueSeam.Block.Mean, units)),
                ("top", Estimate.Off(accuracy.TrueSeam.Across.Mean, units)),
                ("sixteenth", Estimate.Share(accuracy.TrueSeam.OverSixteenth))
            ),
            .. accuracy.Points > 0
                ? [Message.Of("accuracy.points", ("points", accuracy.Points), ("lost", (long)Math.Round(accuracy.Points * accuracy.PointsCutOff)))]
                : ImmutableArray<Message>.Empty,
            .. accuracy.Helps.Take(2).Select((help, i) =>
                Message.Of(
                    "accuracy.help",
                    ("rank", i + 1),
                    ("what", Message.Of($"accuracy.help.{help.Kind.ToString().ToLowerInvariant()}")),
                    ("before", Estimate.Share(help.Before)),
                    ("after", Estimate.Share(help.After))
                )
            ),
        ];
    }

    /// <summary>What the seam test found, and what to move.</summary>
    public static ImmutableArray<Message> Of(SeamTest test)
    {
        var off = test.NeedleOffset;
        return
        [
            Message.Of("accuracy.test", ("across", test.Across), ("middle", test.Middle), ("acrossWanted", test.AcrossWanted), ("middleWanted", test.MiddleWanted)),
            Message.Of("accuracy.needle", ("way", off.Sign > 0 ? "toward" : off.Sign < 0 ? "away" : "none"), ("by", off.Sign < 0 ? -off : off)),
            .. test.CutWider.IsZero
                ? ImmutableArray<Message>.Empty
                : [Message.Of("accuracy.cut", ("way", test.CutWider.Sign > 0 ? "wide" : "narrow"), ("by", test.CutWider.Sign < 0 ? -test.CutWider : test.CutWider))],
        ];
    }
}
