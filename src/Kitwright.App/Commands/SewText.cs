using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Sewing;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>The steps of a quilt as text for the terminal.</summary>
internal static class SewText
{
    public static void Write(TextWriter output, QuiltPlan plan)
    {
        var words = Catalog.English;
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
        }
    }
}
