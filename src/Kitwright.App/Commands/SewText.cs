using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Sewing;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.App.Commands;

/// <summary>The steps of a quilt as text for the terminal.</summary>
internal static class SewText
{
    public static void Write(TextWriter output, QuiltPlan plan, Catalog words, Sewist sewist)
    {
        var sheet = SewingSheet.Of(plan);
        output.WriteLine(
            words.Say("sew.title", ("quilt", plan.Quilt), ("colorway", plan.Colorway ?? "none"), ("mark", plan.Mark))
        );
        output.WriteLine(
            words.Say(
                "sew.totals",
                ("steps", sheet.Steps.Length),
                ("seams", sheet.Seams),
                ("chains", sheet.Chains),
                ("trims", sheet.Trims),
                ("seam", plan.Seam)
            )
        );
        var meetings = PressingReport.Of(plan, SeamTrace.Of(plan));
        output.WriteLine(words.Say("sew.meetings", ("crossings", meetings.Crossings), ("nested", meetings.Nested)));
        var experienced = WorkSheet.Of(plan, StandardTimes.Of(Practice.Experienced), sewist.Allowances);
        var beginner = WorkSheet.Of(plan, StandardTimes.Of(Practice.Beginner), sewist.Allowances);
        output.WriteLine(
            words.Say(
                "sew.times",
                ("experienced", Duration.Say(experienced.Sewing)),
                ("beginner", Duration.Say(beginner.Sewing)),
                ("cutting", Duration.Say(experienced.Cutting)),
                ("cuttingBeginner", Duration.Say(beginner.Cutting))
            )
        );
        var own = sewist.Times is { } times ? WorkSheet.Of(plan, times, sewist.Allowances) : null;
        if (own is not null)
        {
            output.WriteLine(words.Say("times.own.whole", ("sewing", Duration.Say(own.Sewing)), ("cutting", Duration.Say(own.Cutting))));
        }

        foreach (var (count, step) in sheet.Steps.Zip(Directions.Of(plan)))
        {
            output.WriteLine();
            output.WriteLine(
                words.Say("sew.step", ("number", step.Number), ("title", SentenceStart.Of(words.Say(step.Title))))
            );
            foreach (var line in step.Lines)
            {
                output.WriteLine("   " + words.Say(line));
            }

            if (count.SeamsEach > 0)
            {
                output.WriteLine(
                    "   " + words.Say("sew.seams", ("each", count.SeamsEach), ("runs", count.Runs), ("seams", count.AllSeams))
                );
            }

            if (experienced.Steps[step.Number - 1].Seconds <= 0)
            {
                continue;
            }

            output.WriteLine(
                "   "
                    + words.Say(
                        "sew.time",
                        ("experienced", Duration.Say(experienced.Steps[step.Number - 1].Seconds)),
                        ("beginner", Duration.Say(beginner.Steps[step.Number - 1].Seconds))
                    )
                    + (own is null ? "" : " " + words.Say("times.own.step", ("time", Duration.Say(own.Steps[step.Number - 1].Seconds))))
            );
        }
    }
}
