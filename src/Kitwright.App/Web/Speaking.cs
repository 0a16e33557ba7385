using Kitwright.Words;
using Microsoft.AspNetCore.Components;

namespace Kitwright.App.Web;

/// <summary>What every component is: it says messages in the words and units of what stands around it.</summary>
public abstract class Speaking : ComponentBase
{
    [CascadingParameter]
    public Catalog? Around { get; set; }

    protected virtual Catalog Language => Around ?? Catalog.English;

    protected string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) => Saying.Say(Language, Message.Of(key, slots));

    protected string Say(Message message) => Saying.Say(Language, message);
}
