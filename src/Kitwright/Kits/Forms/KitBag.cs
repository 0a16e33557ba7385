using System.Collections.Immutable;
using Kitwright.Cutting.Instructions;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Kits.Forms;

/// <summary>
/// One kit in one of its forms: of the same cutting plan the shop carries out a part and the customer the rest. The
/// backing is a length in every form.
/// </summary>
public sealed record KitBag(KitForm Form, ImmutableArray<BagFabric> Fabrics)
{
    public static KitBag Of(QuiltPlan plan, KitForm form) =>
        new(
            form,
            [
                .. plan.Cloths.Select(cloth => form switch
                {
                    KitForm.Yardage => Yardage(plan, cloth),
                    KitForm.StripCut => StripCut(plan, cloth),
                    _ => FullyCut(plan, cloth),
                }),
            ]
        );

    private static BagFabric Yardage(QuiltPlan plan, ClothPlan cloth) =>
        new(
            cloth.Letter,
            cloth.Purchase,
            cloth.Margin,
            [Message.Of("form.length", ("length", cloth.Purchase))],
            [Message.Of("form.cut-length", ("length", cloth.Purchase))],
            [.. Print(plan, cloth), .. CutInstructions.Of(cloth)]
        );

    /// <summary>What whoever cuts must heed about the print.</summary>
    private static ImmutableArray<Message> Print(QuiltPlan plan, ClothPlan cloth) =>
        plan.Fabrics.FirstOrDefault(fabric => fabric.Letter == cloth.Letter) is { } fabric && PrintWords.Of(fabric) is { } print ? [print] : [];

    /// <summary>Of printed panels whole ones are taken.</summary>
    private static Length Taken(ClothPlan cloth, Length cut) => cloth.Panels is null ? cut : cloth.Purchase;

    /// <summary>The kit's margin goes along as whole strips: from them the customer can cut any piece again.</summary>
    private static BagFabric StripCut(QuiltPlan plan, ClothPlan cloth) =>
        new(
            cloth.Letter,
            Taken(cloth, cloth.Cut + cloth.Margin),
            cloth.Margin,
            [
                .. cloth.Sections.Select(s => Message.Of("form.section", ("length", s.Length))),
                .. CutInstructions.InOrder(cloth).GroupBy(s => s.Height).Select(s => Message.Of("form.strips", ("count", s.Sum(x => x.Times)), ("height", s.Key))),
                .. cloth.Margin.IsZero ? (ImmutableArray<Message>)[] : [Message.Of("form.spare", ("length", cloth.Margin))],
            ],
            [.. Print(plan, cloth), .. CutInstructions.FirstCuts(cloth)],
            [.. Print(plan, cloth), .. CutInstructions.SubCuts(cloth)]
        );

    /// <summary>A piece that the shop spoils it cuts again from the bolt: the bag needs no margin.</summary>
    private static BagFabric FullyCut(QuiltPlan plan, ClothPlan cloth) =>
        new(
            cloth.Letter,
            Taken(cloth, cloth.Cut),
            Length.Zero,
            [
                // A piece that is matched to its print is cut from a room of the cloth that is larger than it.
                .. from demand in cloth.Demand
                where demand.Count > 0
                let piece = plan.Pieces.First(piece => piece.Id == demand.Piece)
                select Message.Of("form.pieces", ("label", demand.Label), ("count", demand.Count), ("width", piece.Width), ("height", piece.Height)),
            ],
            [.. Print(plan, cloth), .. CutInstructions.Of(cloth)],
            []
        );
}

/// <summary>One fabric of a kit.</summary>
/// <param name="OffTheBolt">What the shop takes off the bolt for it, straightening included.</param>
/// <param name="Margin">What of that is there for a mis-cut of the customer's.</param>
/// <param name="Holds">What the bag holds.</param>
/// <param name="ShopCuts">The shop's plan.</param>
/// <param name="CustomerCuts">The customer's plan; empty where nothing is left to cut before sewing.</param>
public sealed record BagFabric(
    string Letter,
    Length OffTheBolt,
    Length Margin,
    ImmutableArray<Message> Holds,
    ImmutableArray<Message> ShopCuts,
    ImmutableArray<Message> CustomerCuts
)
{
    /// <summary>"Off the bolt 30 1/2 in, 2 1/2 in of it for a cut that goes wrong".</summary>
    public Message FromBolt => Message.Of("form.bolt", ("length", OffTheBolt), ("spare", Margin.IsZero ? "none" : "some"), ("margin", Margin));
}
