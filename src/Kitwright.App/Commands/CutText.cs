using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>A cut list's plan as a sheet of instructions for the table.</summary>
internal static class CutText
{
    public static void Write(TextWriter output, CutOutcome cut)
    {
        var words = Catalog.English;
        var unit = cut.Length.Unit is null ? "in" : "none";
        foreach (var cloth in cut.Cloths)
        {
            var used = cloth.Strips.Aggregate(cloth.Length.Length, (left, strip) => left - (strip.Height.Length * strip.Times));
            if (!used.IsZero)
            {
                output.WriteLine(words.Say("cut.instructions.square", ("length", (cut.Length with { Length = used }).ToString())));
            }

            foreach (var strip in cloth.Strips)
            {
                used += strip.Height.Length * strip.Times;
                output.WriteLine(words.Say("cut.instructions.strips", ("count", strip.Times), ("height", strip.Height.ToString())));
                foreach (var piece in strip.SubCuts)
                {
                    output.WriteLine(
                        "    "
                            + words.Say(
                                "cut.instructions.piece",
                                ("count", piece.Times),
                                ("width", piece.Width.ToString()),
                                ("height", piece.Height.ToString()),
                                ("label", piece.Label),
                                ("trims", piece.Trims * piece.Times)
                            )
                    );
                }

                output.WriteLine("    " + words.Say("cut.instructions.used", ("length", (cut.Length with { Length = used }).ToString())));
            }
        }

        output.WriteLine(
            words.Say("cut.instructions.length", ("length", cut.Length.ToString()), ("bound", cut.Bound.ToString()), ("unit", unit))
        );
        if (cut.Purchase is { } purchase)
        {
            output.WriteLine(words.Say("cut.instructions.purchase", ("purchase", purchase.ToString()), ("unit", unit)));
        }

        output.WriteLine(
            cut.Status switch
            {
                "proved" => words.Say("cut.instructions.proved"),
                "provedBySearch" => words.Say("cut.instructions.searched"),
                _ => words.Say("cut.instructions.within", ("percent", Percent(cut))),
            }
        );
        output.WriteLine(words.Say("print.caution.cutter.1"));
        output.WriteLine(words.Say("print.caution.cutter.2"));
    }

    /// <summary>The gap in hundredths of a percent, rounded up.</summary>
    private static string Percent(CutOutcome cut)
    {
        var hundredths = ((cut.Length.Length - cut.Bound.Length) / cut.Bound.Length * 10_000).Ceiling();
        return LengthText.Mixed(new Rational(hundredths, 100));
    }
}
