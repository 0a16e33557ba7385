using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Deciding;

/// <summary>
/// Changes that are tried and not kept, as a page's address holds them: <c>columns:6,border.2:3 1/2</c>. They are
/// applied one after the other to the quilt as it is kept.
/// </summary>
public sealed record Trial(ImmutableArray<(string Name, string Value)> Changes)
{
    public static Trial Parse(string? text) =>
        new(
            [
                .. (text ?? "")
                    .Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Select(part => part.Split(':', 2))
                    .Select(parts => (parts[0], parts.Length > 1 ? parts[1] : "")),
            ]
        );

    public string? Text => Changes.IsEmpty ? null : string.Join(',', Changes.Select(change => $"{change.Name}:{change.Value}"));

    /// <summary>With one value changed, again or for the first time.</summary>
    public Trial With(string name, string value) => new([.. Changes.Where(change => change.Name != name), (name, value)]);

    /// <summary>The quilt with the changes; what cannot be applied is a finding and is left out.</summary>
    /// <param name="colorway">The colorway whose fabrics a change of fabric means.</param>
    public (Quilt Quilt, ImmutableArray<Finding> Findings) Apply(Quilt quilt, string? colorway, Shelf shelf)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var (name, value) in Changes)
        {
            var shown = colorway is null ? null : quilt.Colorway(colorway);
            var decisions = Decisions.Of(quilt).AddRange(shown is null ? [] : Decisions.Of(quilt, shown, shelf));
            if (decisions.FirstOrDefault(d => d.Name == name)?.Change(value) is { } changed)
            {
                quilt = changed;
            }
            else
            {
                findings.Add(Finding.Of("web.try.unknown", "address", ("name", name), ("value", value)));
            }
        }

        return (quilt, findings.ToImmutable());
    }
}
