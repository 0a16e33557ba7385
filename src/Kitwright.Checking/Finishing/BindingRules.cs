using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Finishing;

/// <summary>
/// Strips joined on the diagonal: a join takes one strip width of length (own arithmetic: two right-angled ends
/// overlap by the width), and the strips must reach round the quilt with the allowance, without one too many.
/// </summary>
internal static class BindingRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        var binding = plan.Binding;
        var perimeter = (plan.Design.Width + plan.Design.Height) * 2;
        if (binding.Perimeter != perimeter)
        {
            findings.Add("check.binding.perimeter", "binding", Say.Inches(binding.Perimeter), Say.Inches(perimeter));
        }

        if (plan.Pieces.FirstOrDefault(p => p.Id == binding.Piece) is not { } piece)
        {
            findings.Add("check.binding.piece", "binding", ("piece", binding.Piece.Value));
            return;
        }

        if (piece.Height != binding.StripWidth || binding.StripWidth.Sign <= 0 || binding.Allowance.Sign < 0)
        {
            findings.Add("check.binding.strip", piece.Id.Value, Say.Inches(piece.Height), Say.Inches(binding.StripWidth));
            return;
        }

        var wanted = binding.Perimeter + binding.Allowance;
        var strips = Reach(binding.Strips, piece.Width, binding.StripWidth);
        if (binding.Strips < 1 || strips < wanted)
        {
            findings.Add("check.binding.short", "binding", Say.Inches(strips), Say.AtLeast(Say.Inches(wanted)));
        }
        else if (binding.Strips > 1 && Reach(binding.Strips - 1, piece.Width, binding.StripWidth) >= wanted)
        {
            findings.Add("check.binding.over", "binding", Say.Count(binding.Strips), Say.Count(binding.Strips - 1));
        }
    }

    private static Length Reach(int strips, Length length, Length width) => (length * strips) - (width * (strips - 1L));
}
