using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;

namespace Kitwright.Print.Pages;

/// <summary>A label for each stack of pieces, to be cut out and pinned on.</summary>
internal static class LabelPages
{
    private const int Columns = 3;
    private const double Height = 98;

    public static Section Of(BookletSource source) =>
        Section.Titled(
            source.Say("print.labels"),
            Texts.Body(source.Say("print.labels.how")),
            new Stack(
                [
                    .. source
                        .Plan.Pieces.Chunk(Columns)
                        .Select(pieces => new Row(
                            [
                                .. Enumerable
                                    .Range(0, Columns)
                                    .Select(i => new RowCell(null, i < pieces.Length ? Label(source, pieces[i]) : new Blank(0))),
                            ]
                        )),
                ]
            )
        );

    private static Frame Label(BookletSource source, CutPiece piece)
    {
        var letter = source.Fills.Letter(piece.Role);
        var swatch = Swatch.Of(letter, source.Fills.OfRole(piece.Role), 34, 26) with { Role = Role.Decoration };
        ImmutableArray<Element> hand = piece.Hand == Hand.Either
            ? []
            : [Texts.Small(source.Say("print.label.hand", ("mirror", source.Plan.Pieces.FirstOrDefault(other => other.Id == piece.Mirror)?.Label ?? "none")))];
        ImmutableArray<Element> lines =
        [
            new Row([new(null, Texts.Plain(piece.Label, Look.Section) with { Role = Role.Paragraph }), new(34, new Picture(swatch, 34, 26))]),
            Texts.Plain(
                source.Say("print.label.size", ("count", piece.ToCut), ("short", Length.Min(piece.Width, piece.Height)), ("long", Length.Max(piece.Width, piece.Height))),
                Look.Figures.Bold
            ) with
            {
                Role = Role.Paragraph,
            },
            Texts.Small(source.Say("print.label.fabric", ("letter", letter), ("role", source.RoleNames([piece.Role])))),
            Texts.Small(source.Say(piece.Use)),
            .. hand,
            Texts.Small(source.Say("print.mark", ("mark", source.Plan.Mark))),
        ];
        return new(new Stack(lines, 1), 7) { Line = Look.Dashes, LeastHeight = Height };
    }
}
