using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace Kitwright.App.Features.Desk;

/// <summary>
/// The newest address that a person has asked for. The browser's own is a round trip behind, and what is changed in
/// that time must start from the change before it, or that one is lost.
/// </summary>
public sealed class Whereabouts : IDisposable
{
    private readonly NavigationManager navigation;
    private DeskAddress? underway;

    public Whereabouts(NavigationManager navigation)
    {
        this.navigation = navigation;
        navigation.LocationChanged += Arrived;
    }

    public DeskAddress Now => underway ?? DeskAddress.Now(navigation);

    /// <summary>Goes to an address in place of the present one.</summary>
    public void Go(DeskAddress address)
    {
        underway = address;
        navigation.NavigateTo(address.Href, replace: true);
    }

    public void Dispose() => navigation.LocationChanged -= Arrived;

    // A link that is followed, or the way back, ends what was underway; of several changes only the last has arrived.
    private void Arrived(object? sender, LocationChangedEventArgs arrived)
    {
        if (arrived.IsNavigationIntercepted || DeskAddress.Now(navigation) == underway)
        {
            underway = null;
        }
    }
}
