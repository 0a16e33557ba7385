using Kitwright.App.Web;
using Kitwright.Plans;
using Kitwright.Words;
using Microsoft.AspNetCore.Components;

namespace Kitwright.App.Features.Desk;

/// <summary>A page of one quilt: reads its address and lays out the work.</summary>
public abstract class StopPage : Speaking
{
    [Parameter]
    public string Slug { get; set; } = "";

    [SupplyParameterFromQuery]
    public string? Colorway { get; set; }

    [SupplyParameterFromQuery]
    public string? At { get; set; }

    [SupplyParameterFromQuery]
    public string? Try { get; set; }

    [SupplyParameterFromQuery]
    public string? Kits { get; set; }

    [Inject]
    public required IWorkbench Workbench { get; set; }

    [Inject]
    public required NavigationManager Navigation { get; set; }

    protected abstract Stop Stop { get; }

    protected override Catalog Language => Work is null ? Languages.Of(Workbench.Terms) : Languages.Of(Work.Quilt, Workbench.Terms);

    /// <summary>What the page shows; while the next is planned, still the last.</summary>
    protected Work? Work { get; private set; }

    private readonly SemaphoreSlim turn = new(1);

    private DeskAddress? asked;

    protected override Task OnParametersSetAsync() => Lay();

    /// <summary>Lays out the work of the page's address; also where what is kept has changed under it.</summary>
    protected async Task Lay()
    {
        var address = new DeskAddress(Slug, Stop, Colorway, new(At), Try, Kits);
        asked = address;
        // Links lead on from where the browser is, also while the plan is still that of the last address.
        Work = Work is null ? null : Work with { Address = address };
        // The first time there is nothing to show meanwhile.
        var work = Work is null ? Work.At(address, Workbench) : await InTurn(address);
        if (asked != address)
        {
            // Another address was asked for meanwhile.
            return;
        }

        Work = work;
        if (work is null)
        {
            Navigation.NotFound();
        }
    }

    /// <summary>
    /// One after the other: of colorways chosen faster than they are planned, only the last is, and the browser beside the
    /// server has a core to paint with. Null where another address was asked for meanwhile.
    /// </summary>
    private async Task<Work?> InTurn(DeskAddress address)
    {
        await turn.WaitAsync();
        try
        {
            return asked == address ? await Task.Run(() => Work.At(address, Workbench)) : null;
        }
        finally
        {
            turn.Release();
        }
    }
}
