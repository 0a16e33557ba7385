using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>Labels the stacks in the order of use, A1, A2 …, and gives pieces the ids that go with their labels.</summary>
internal static class Labels
{
    public static Pieced Apply(
        PieceBook book,
        Letters letters,
        Dictionary<PathId, int> counts,
        ImmutableArray<Recipe> recipes,
        BindingPlan binding,
        Quilt quilt,
        Design design,
        ClothTerms terms,
        PrintRoles prints
    )
    {
        var entries = book.Entries.ToDictionary(e => e.Id);
        var spare = quilt.Roles.ToDictionary(role => role.Id, role => role.Spare);
        var inUse = recipes
            .SelectMany(r => r.Verbs.OfType<Take>())
            .Select(t => t.Piece)
            .Append(binding.Piece)
            .Distinct();
        var numbers = new Dictionary<string, int>();
        var renamed = new Dictionary<PathId, PathId>();
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        var made = new Dictionary<PathId, PieceBook.Entry>();
        foreach (var old in inUse)
        {
            var entry = entries[old];
            var letter = letters.Of(entry.Role);
            var number = numbers[letter] = numbers.GetValueOrDefault(letter) + 1;
            var label = letter + number;
            var id = renamed[old] = new PathId($"piece/{label}");
            pieces.Add(
                new(id, label, entry.Role, entry.Width, entry.Height, counts[old], old == binding.Piece ? 0 : spare.GetValueOrDefault(entry.Role), entry.MayTurn, entry.Use, entry.Why)
                {
                    Grain = entry.Grain,
                    Hand = entry.Hand.Hand,
                }
            );
            made.Add(id, entry);
        }

        for (var i = 0; i < pieces.Count; i++)
        {
            var mirror = pieces.FirstOrDefault(other => made[other.Id].Mirrors(made[pieces[i].Id]));
            pieces[i] = pieces[i] with { Mirror = mirror?.Id };
        }

        return new(
            [.. pieces.OrderBy(p => letters.Of(p.Role).Length).ThenBy(p => letters.Of(p.Role), StringComparer.Ordinal)],
            new([.. recipes.Select(r => Renamed(r, renamed))]),
            binding with { Piece = renamed[binding.Piece] },
            BackingPanels.Of(quilt.Backing, design.Width, design.Height, terms, prints.Direction(quilt.Backing.Role) != PrintDirection.Any),
            PackagedBattings.Need(design.Width + (quilt.Backing.Overhang * 2), design.Height + (quilt.Backing.Overhang * 2))
        );
    }

    private static Recipe Renamed(Recipe recipe, Dictionary<PathId, PathId> names) =>
        recipe with
        {
            Verbs = [.. recipe.Verbs.Select(v => v is Take take ? take with { Piece = names[take.Piece] } : v)],
            Picture = recipe.Picture with
            {
                Parts = [.. recipe.Picture.Parts.Select(p => p with { Of = names.GetValueOrDefault(p.Of, p.Of) })],
            },
        };
}
