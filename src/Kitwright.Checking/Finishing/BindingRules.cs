using Kitwright.Geometry;
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

        if (binding.Grain == CutGrain.Bias)
        {
            OnTheBias(plan, piece, findings);
            return;
        }

        if (binding.Rounds != 0)
        {
            findings.Add("check.binding.rounds", "binding", Say.Count(binding.Rounds), Say.Count(0));
        }

        var (length, width) = binding.Grain == CutGrain.Lengthwise ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        if (width != binding.StripWidth || binding.StripWidth.Sign <= 0 || binding.Allowance.Sign < 0 || (binding.Grain == CutGrain.Lengthwise) != (piece.Grain == CutGrain.Lengthwise))
        {
            findings.Add("check.binding.strip", piece.Id.Value, Say.Inches(width), Say.Inches(binding.StripWidth));
            return;
        }

        var wanted = binding.Perimeter + binding.Allowance;
        var strips = Reach(binding.Strips, length, binding.StripWidth);
        if (binding.Strips < 1 || strips < wanted)
        {
            findings.Add("check.binding.short", "binding", Say.Inches(strips), Say.AtLeast(Say.Inches(wanted)));
        }
        else if (binding.Grain == CutGrain.Crosswise && binding.Strips > 1 && Reach(binding.Strips - 1, length, binding.StripWidth) >= wanted)
        {
            findings.Add("check.binding.over", "binding", Say.Count(binding.Strips), Say.Count(binding.Strips - 1));
        }
    }

    private static Length Reach(int strips, Length length, Length width) => (length * strips) - (width * (strips - 1L));

    /// <summary>
    /// A square cut on its diagonal and sewn to a slanting band loses two allowances in one direction; sewn to a tube,
    /// two in the other. Between its slanting edges it holds whole strips only, each as long as the slant.
    /// </summary>
    private static void OnTheBias(QuiltPlan plan, CutPiece piece, FindingList findings)
    {
        var binding = plan.Binding;
        var side = piece.Width - (plan.Seam * 2);
        if (piece.Height != piece.Width || binding.StripWidth.Sign <= 0 || binding.Allowance.Sign < 0 || side.Sign <= 0 || binding.Strips < 1)
        {
            findings.Add("check.binding.strip", piece.Id.Value, Say.Inches(piece.Height), Say.Inches(piece.Width));
            return;
        }

        // n strips of width w lie between the slanting edges where n·w·√2 is no more than the side.
        if (binding.Rounds < 0 || Surd.OfRoot2(1) * binding.StripWidth * binding.Rounds > (Surd)side)
        {
            findings.Add("check.binding.rounds", "binding", Say.Count(binding.Rounds), Say.Inches(side));
            return;
        }

        Surd each = Surd.OfRoot2(1) * side * binding.Rounds,
            all = (each * binding.Strips) - (Surd)(binding.StripWidth * (binding.Strips - 1L)),
            wanted = (Surd)(binding.Perimeter + binding.Allowance);
        if (all < wanted)
        {
            findings.Add("check.binding.short", "binding", Say.Inches(all), Say.AtLeast(Say.Inches(wanted)));
        }
    }
}
