using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>What a cloth is asked for is what the cut list states: each class of pieces once, from a cloth of its role.</summary>
internal static class DemandRule
{
    public static void Check(ClothPlan cloth, QuiltPlan plan, FindingList findings)
    {
        var pieces = plan.Pieces.ToLookup(p => p.Id);
        foreach (var demand in cloth.Demand)
        {
            if (pieces[demand.Piece].FirstOrDefault() is not { } piece)
            {
                findings.Add("check.cloth.unknown-piece", cloth.Id.Value, ("piece", demand.Piece.Value));
                continue;
            }

            if (
                // A room for a piece that is matched to its print is held against the piece by the rules of matching.
                (cloth.Terms.Match is null && (demand.Width != piece.Width || demand.Height != piece.Height))
                || demand.MayTurn != piece.MayTurn
                || demand.Label != piece.Label
                || demand.Lengthwise != (piece.Grain == CutGrain.Lengthwise)
                || demand.HasOwnReserve != (piece.Grain is CutGrain.Lengthwise or CutGrain.Bias)
            )
            {
                findings.Add(
                    "check.cloth.demand-differs",
                    piece.Id.Value,
                    Say.Size(demand.Width, demand.Height),
                    Say.Size(piece.Width, piece.Height),
                    ("cloth", cloth.Id.Value)
                );
            }

            if (!cloth.Roles.Contains(piece.Role))
            {
                findings.Add(
                    "check.cloth.role",
                    piece.Id.Value,
                    Say.Names(cloth.Roles),
                    Say.Names([piece.Role]),
                    ("cloth", cloth.Id.Value)
                );
            }
        }
    }

    /// <summary>Every piece is asked of one cloth, as often as it is sewn and spared.</summary>
    public static void CheckAllCut(QuiltPlan plan, FindingList findings)
    {
        var asked = plan.Cloths.SelectMany(c => c.Demand).ToLookup(d => d.Piece);
        foreach (var piece in plan.Pieces)
        {
            if (piece.Width.Sign <= 0 || piece.Height.Sign <= 0 || piece.Count < 0 || piece.Spare < 0)
            {
                findings.Add("check.plan.piece", piece.Id.Value);
            }

            var rows = asked[piece.Id].ToArray();
            var count = rows.Sum(d => (long)d.Count);
            var toCut = (long)piece.Count + piece.Spare;
            if (rows.Length != 1 || count != toCut)
            {
                findings.Add("check.cloth.demand-count", piece.Id.Value, Say.Count(count), Say.Count(toCut));
            }
        }
    }
}
