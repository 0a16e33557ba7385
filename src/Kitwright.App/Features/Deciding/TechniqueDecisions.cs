using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>How each kind of unit is made, as a decision of the quilt; kept in its file under <c>techniques</c>.</summary>
public static class TechniqueDecisions
{
    /// <summary>The value that takes the quilt's own choice back, so that it follows the shop's.</summary>
    public const string AsTheShop = "shop";

    public static string NameOf(UnitKind kind) => $"technique.{kind.Name}";

    public static IEnumerable<Decision> Of(Quilt quilt) =>
        TechniqueBook.Kinds.Select(
            (kind, i) =>
                new Decision(
                    NameOf(kind),
                    "technique",
                    i + 1,
                    quilt.Techniques.GetValueOrDefault(kind.Name, AsTheShop),
                    [new(AsTheShop, Saying.Say("technique.as-shop")), .. kind.Techniques.Select(t => new Choice(t.Name, Saying.Say($"technique.{kind.Name}.{t.Name}")))],
                    name =>
                        name == AsTheShop ? quilt with { Techniques = quilt.Techniques.Remove(kind.Name) }
                        : kind.Has(name) ? quilt with { Techniques = quilt.Techniques.SetItem(kind.Name, name) }
                        : null
                )
        );
}
