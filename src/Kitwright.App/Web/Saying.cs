using Kitwright.Words;

namespace Kitwright.App.Web;

/// <summary>The pages' way to the message templates.</summary>
public static class Saying
{
    public static string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) =>
        Catalog.English.Say(key, slots);

    public static string Say(Message message) => Catalog.English.Say(message);
}
