using Kitwright.Measure;
using Kitwright.Quilts.Reading;

namespace Kitwright.Quilts;

/// <summary>Whether borders that are pieced from units come out round what lies inside them.</summary>
internal static class BorderRules
{
    /// <summary>The names and kinds that a border's units state, before anything is laid.</summary>
    public static void CheckNames(Quilt quilt, Report report)
    {
        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            if (quilt.Borders[i].Units is not { } units)
            {
                continue;
            }

            foreach (var (field, block) in new[] { ("block", (string?)units.Block), ("corner", units.Corner), ("alternate", units.Alternate) })
            {
                if (block is not null && quilt.Blocks.All(b => b.Id != block))
                {
                    report.Fault("quilt.block.unknown", $"/borders/{i}/units/{field}", ("block", block));
                }
                else if (field == "corner" && block is not null && quilt.Block(block) is { } square && square.Width != square.Height)
                {
                    report.Fault("quilt.border.units.corner", $"/borders/{i}/units/corner", ("border", i + 1), ("block", square.Name));
                }
            }

            if (
                quilt.Blocks.FirstOrDefault(b => b.Id == units.Block) is { } one
                && quilt.Blocks.FirstOrDefault(b => b.Id == units.Alternate) is { } other
                && one.Width / one.Height != other.Width / other.Height
            )
            {
                report.Fault("quilt.border.units.alternate", $"/borders/{i}/units/alternate", ("border", i + 1), ("one", one.Name), ("other", other.Name));
            }

            if (quilt.Borders[i].Style == BorderStyle.Mitered)
            {
                report.Fault("quilt.border.units.mitered", $"/borders/{i}/style", ("border", i + 1));
            }
        }
    }

    /// <summary>Each border round the frame that the ones inside it leave.</summary>
    public static void CheckFit(Quilt quilt, Report report)
    {
        if (quilt.Borders.All(border => border.Units is null))
        {
            return;
        }

        var inner = Layout.CenterShape(quilt);
        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            var border = quilt.Borders[i];
            if (border.Units is not { } units)
            {
                inner = inner.Grown(border.Width);
                continue;
            }

            var block = quilt.Block(units.Block);
            var (fit, need, across) = UnitFit.Try(border, block, inner.Width, inner.Height);
            if (fit is null)
            {
                report.Fault("quilt.border.units", $"/borders/{i}/units", Slots(quilt, i, block, inner, need, across));
                return;
            }

            if (!(fit.CopingAcross / quilt.RulerStep).IsInteger || !(fit.CopingDown / quilt.RulerStep).IsInteger)
            {
                report.Note("quilt.border.coping", $"/borders/{i}/units", Slots(quilt, i, block, inner, need, across));
            }

            inner = new Frame(inner.Left - fit.CopingAcross, inner.Bottom - fit.CopingDown, inner.Right + fit.CopingAcross, inner.Top + fit.CopingDown).Grown(border.Width);
        }
    }

    private static (string, object)[] Slots(Quilt quilt, int index, Block block, Frame inner, Length need, bool across)
    {
        var border = quilt.Borders[index];
        var way = BorderProposals.Of(border, block, inner.Width, inner.Height, quilt.RulerStep).FirstOrDefault();
        return
        [
            ("border", index + 1),
            ("unit", UnitFit.UnitLength(border.Width, border.Units!, block)),
            ("need", need),
            ("way", across ? "across" : "down"),
            ("found", way is null ? "no" : way.Fit.CopingAcross.Sign > 0 || way.Fit.CopingDown.Sign > 0 ? "coping" : "exact"),
            ("width", way?.Width ?? border.Width),
            ("across", way?.Fit.Across ?? 0),
            ("down", way?.Fit.Down ?? 0),
            ("copes", way?.Fit.Copes ?? "none"),
            ("left", way?.Fit.CopingAcross ?? Length.Zero),
            ("above", way?.Fit.CopingDown ?? Length.Zero),
        ];
    }
}
