using System.Collections.Concurrent;
using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Kitwright.App.Web;

/// <summary>Keeps the keys that protect a page's state for as long as the process runs; nothing outlives it that needs them.</summary>
public sealed class KeysInMemory : IXmlRepository
{
    private readonly ConcurrentQueue<XElement> keys = new();

    public IReadOnlyCollection<XElement> GetAllElements() => [.. keys];

    public void StoreElement(XElement element, string friendlyName) => keys.Enqueue(element);
}
