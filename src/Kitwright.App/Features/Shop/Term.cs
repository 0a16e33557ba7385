using System.Collections.Immutable;
using Kitwright.App.Features.Deciding;
using Kitwright.Kits;

namespace Kitwright.App.Features.Shop;

/// <summary>One value of the shop's terms that its sentences state and that can be changed there.</summary>
/// <param name="Name">As addresses hold it; also names the label's template.</param>
/// <param name="Value">The choice that holds now.</param>
/// <param name="Change">The terms with another choice; null where the text is none.</param>
public sealed record Term(string Name, string Value, ImmutableArray<Choice> Choices, Func<string, ShopTerms?> Change);
