using System.Collections.Immutable;
using Kitwright.App.Web;
using Kitwright.Pressing;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>How seams are pressed, as decisions of the quilt; kept in its file under <c>pressing</c>.</summary>
public static class PressingDecisions
{
    public static string NameOf(PressingChoice choice) => $"pressing.{choice.Name}";

    public static IEnumerable<Decision> Of(Quilt quilt) =>
        PressingBook.Choices.Select(
            (choice, i) =>
                new Decision(
                    NameOf(choice),
                    "pressing",
                    i + 1,
                    PressingBook.Of(quilt.Pressing, choice.Name),
                    [.. choice.Ways.Select(way => new Choice(way, Saying.Say($"pressing.{choice.Name}.{way}")))],
                    way => choice.Has(way) ? With(quilt, choice, way) : null
                )
        );

    // The usual way is not written down.
    private static Quilt With(Quilt quilt, PressingChoice choice, string way)
    {
        var chosen = quilt.Pressing ?? ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);
        chosen = way == choice.Ways[0] ? chosen.Remove(choice.Name) : chosen.SetItem(choice.Name, way);
        return quilt with { Pressing = chosen.IsEmpty ? null : chosen };
    }
}
