using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>How each kind of unit is made, as a decision of the quilt; kept in its file under <c>techniques</c>.</summary>
public static class TechniqueDecisions
{
    public static string NameOf(UnitKind kind) => $"technique.{kind.Name}";

    public static IEnumerable<Decision> Of(Quilt quilt) =>
        TechniqueBook.Kinds.Select(
            (kind, i) =>
                new Decision(
                    NameOf(kind),
                    "technique",
                    i + 1,
                    quilt.Techniques.GetValueOrDefault(kind.Name, kind.Techniques[0].Name),
                    [.. kind.Techniques.Select(t => new Choice(t.Name, Saying.Say($"technique.{kind.Name}.{t.Name}")))],
                    name => kind.Has(name) ? quilt with { Techniques = quilt.Techniques.SetItem(kind.Name, name) } : null
                )
        );
}
