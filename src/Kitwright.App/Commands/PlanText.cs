using Kitwright.Cutting;
using Kitwright.Cutting.Instructions;
using Kitwright.Plans;
using Kitwright.Sewing;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>A plan as text for the terminal: per fabric its length, the cuts as a quilter writes them, and the pieces.</summary>
internal static class PlanText
{
    /// <param name="why">With the arithmetic behind each size.</param>
    public static void Write(TextWriter output, QuiltPlan plan, Catalog words, bool why = false)
    {
        void Line(string key, params ReadOnlySpan<(string, object)> slots) => output.WriteLine(words.Say(key, slots));

        Line("plan.title", ("quilt", plan.Quilt), ("colorway", plan.Colorway ?? "none"), ("mark", plan.Mark));
        foreach (var cloth in plan.Cloths)
        {
            var fabric = plan.Fabrics.First(f => f.Letter == cloth.Letter);
            output.WriteLine();
            Line("plan.cloth", ("letter", cloth.Letter), ("name", fabric.Name), ("purchase", cloth.Purchase));
            if (PrintWords.Of(fabric) is { } print)
            {
                output.WriteLine("  " + words.Say(print));
            }

            foreach (var message in CutInstructions.Of(cloth))
            {
                output.WriteLine("  " + words.Say(message));
            }

            if (cloth.Terms.Table is { } table)
            {
                output.WriteLine(
                    "  " + words.Say("plan.ruler", ("ruler", table.RulerLength), ("placings", RulerPlacings.Of(cloth)), ("passes", cloth.Figures.Passes ?? 0))
                );
            }

            foreach (var piece in plan.Pieces.Where(p => cloth.Roles.Contains(p.Role)))
            {
                Line(
                    "plan.piece",
                    ("label", piece.Label),
                    ("count", piece.ToCut),
                    ("spare", piece.Spare),
                    ("width", piece.Width),
                    ("height", piece.Height),
                    ("use", piece.Use)
                );
                if (HandWords.Of(plan, piece) is { } hand)
                {
                    Line("plan.why", ("why", hand));
                }

                if (why)
                {
                    Line("plan.why", ("why", piece.Why));
                }
            }
        }

        output.WriteLine();
        if (plan.Binding.Grain == CutGrain.Bias)
        {
            var side = plan.Pieces.First(piece => piece.Id == plan.Binding.Piece).Width;
            Line("plan.binding.bias", ("squares", plan.Binding.Strips), ("side", side), ("wanted", plan.Binding.Wanted));
        }
        else
        {
            Line("plan.binding", ("strips", plan.Binding.Strips), ("width", plan.Binding.StripWidth), ("wanted", plan.Binding.Wanted));
        }

        Line("plan.backing", ("panels", plan.Backing.Panels), ("length", plan.Backing.PanelLength), ("purchase", plan.Backing.Purchase));
        if (plan.Needs.Batting?.Package is { } package)
        {
            Line("plan.batting.package", ("width", plan.Backing.Width), ("height", plan.Backing.Height), ("name", Message.Of($"batting.{package.Name}")));
        }
        else
        {
            Line("plan.batting", ("width", plan.Backing.Width), ("height", plan.Backing.Height));
        }
    }
}
