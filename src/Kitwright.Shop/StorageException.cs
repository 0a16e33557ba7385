using Kitwright.Findings;
using Kitwright.Words;

namespace Kitwright.Shop;

/// <summary>The disk or another station is in the way of the shop's file; the message is the finding's reason.</summary>
public sealed class StorageException(Finding finding, Exception inner) : IOException(Catalog.English.Say(finding.Reason), inner)
{
    public Finding Finding { get; } = finding;
}
