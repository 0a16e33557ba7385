using System.Globalization;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.App.Features.Desk;

/// <summary>What a touched item is called.</summary>
public static class TouchedName
{
    public static Message Of(Work work)
    {
        var (plan, selection) = (work.Plan!, work.Selection);
        if (plan.Design.Placements.FirstOrDefault(p => p.Id == selection.Place) is { } placed)
        {
            var name = plan.Design.Blocks.First(b => b.Id == placed.Block).Name;
            var block = placed.Id.Value.Split('/') is ["border", var border, ..]
                ? Message.Of("web.touched.border-unit", ("name", name), ("border", int.Parse(border, CultureInfo.InvariantCulture)))
                : Message.Of("web.touched.placed", ("name", name), ("row", Part(placed.Id, 'r')), ("column", Part(placed.Id, 'c')));
            return selection.Block is null ? Message.Of("web.touched.patch", ("where", block)) : block;
        }

        if (plan.Pieces.FirstOrDefault(p => p.Id == selection.Item) is { } piece)
        {
            return Message.Of("web.touched.piece", ("label", piece.Label));
        }

        if (plan.Cloths.FirstOrDefault(c => $"{selection.Item}/".StartsWith($"{c.Id}/", StringComparison.Ordinal)) is { } cloth)
        {
            return Message.Of("web.touched.cloth", ("letter", cloth.Letter));
        }

        return plan.Sewing.Recipes.FirstOrDefault(r => r.Id == selection.Item) is { } recipe
            ? recipe.Name
            : Message.Of("web.touched.frame", ("role", NameOfRole(work, RoleOf(plan, selection.Item))));
    }

    // Places are named place/r3/c2.
    private static int Part(PathId place, char letter) =>
        place.Value.Split('/').Where(part => part.StartsWith(letter)).Select(part => int.TryParse(part[1..], out var n) ? n : 0).FirstOrDefault();

    private static string NameOfRole(Work work, string id) => work.Quilt.Roles.FirstOrDefault(role => role.Id == id)?.Name ?? id;

    private static string RoleOf(QuiltPlan plan, PathId patch) =>
        plan.Design.Patches.Concat(plan.Design.Blocks.SelectMany(b => b.Patches)).FirstOrDefault(p => p.Id == patch)?.Role ?? "";
}
